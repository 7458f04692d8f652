#include "core/files/system_words.h"

#include <cerrno>
#include <system_error>

namespace gazewright {
namespace {

std::string system_text(int error) { return std::generic_category().message(error); }

}  // namespace

SystemWords words_for_reading(int error) {
  switch (error) {
    case ENOENT:
      return {"there is no such file", "check the name and the folder"};
    case ENOTDIR:
      return {"a part of its path is a file, not a folder", "check the name and the folder"};
    case EISDIR:
      return {"this is a folder, not a file", "choose a rig file in it"};
    case EACCES:
    case EPERM:
      return {"you may not read this file", "ask for the right to read it, or copy it"};
    default:
      return {"the file cannot be read: " + system_text(error),
              "check the disk, or choose another file"};
  }
}

SystemWords words_for_writing(int error) {
  switch (error) {
    case ENOENT:
      return {"the folder does not exist", "make the folder first, or choose another"};
    case ENOTDIR:
      return {"a part of its path is a file, not a folder", "choose another folder"};
    case EISDIR:
      return {"this is a folder, not a file", "choose a file name in it"};
    case EACCES:
    case EPERM:
      return {"you may not write here", "choose another folder, or ask for the right to write"};
    case EROFS:
      return {"this disk is read-only", "choose a folder on another disk"};
    case ENOSPC:
    case EDQUOT:
      return {"the disk is full", "make room, or choose another disk"};
    case EFBIG:
      return {"the file would be larger than is allowed here", "choose another disk"};
    case ENAMETOOLONG:
      return {"the file name is too long", "choose a shorter name"};
    default:
      return {"the file cannot be written: " + system_text(error),
              "check the disk, or choose another folder"};
  }
}

}  // namespace gazewright
