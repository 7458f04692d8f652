#include "core/files/system_words.h"

#include <cerrno>
#include <system_error>

#include "core/words/words.h"

namespace gazewright {
namespace {

std::string system_text(int error) { return std::generic_category().message(error); }

}  // namespace

SystemWords words_for_reading(int error) {
  switch (error) {
    case ENOENT:
      return {words("there is no such file"), words("check the name and the folder")};
    case ENOTDIR:
      return {words("a part of its path is a file, not a folder"),
              words("check the name and the folder")};
    case EISDIR:
      return {words("this is a folder, not a file"), words("choose a rig file in it")};
    case EACCES:
    case EPERM:
      return {words("you may not read this file"),
              words("ask for the right to read it, or copy it")};
    default:
      return {words("the file cannot be read: %1", system_text(error)),
              words("check the disk, or choose another file")};
  }
}

SystemWords words_for_writing(int error) {
  switch (error) {
    case ENOENT:
      return {words("the folder does not exist"),
              words("make the folder first, or choose another")};
    case ENOTDIR:
      return {words("a part of its path is a file, not a folder"), words("choose another folder")};
    case EISDIR:
      return {words("this is a folder, not a file"), words("choose a file name in it")};
    case EACCES:
    case EPERM:
      return {words("you may not write here"),
              words("choose another folder, or ask for the right to write")};
    case EROFS:
      return {words("this disk is read-only"), words("choose a folder on another disk")};
    case ENOSPC:
    case EDQUOT:
      return {words("the disk is full"), words("make room, or choose another disk")};
    case EFBIG:
      return {words("the file would be larger than is allowed here"), words("choose another disk")};
    case ENAMETOOLONG:
      return {words("the file name is too long"), words("choose a shorter name")};
    default:
      return {words("the file cannot be written: %1", system_text(error)),
              words("check the disk, or choose another folder")};
  }
}

}  // namespace gazewright
