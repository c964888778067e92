#include <locale.h>
#include <wctype.h>

#include <algorithm>
#include <cwchar>

#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "tables/marks_list.h"
#include "tables/problems.h"

namespace landdrill {
namespace {

tl::unexpected<Complaint> no_name(std::string found) {
  return tl::unexpected(
      Complaint{Problem::bad_name, std::move(found), "a name on one line, such as Robin", ""});
}

// The same letters whatever their case. The locale is part of the C library, not of the system's settings.
std::wstring in_lower_case(std::string_view name) {
  static const locale_t any_alphabet = newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr);
  std::wstring lower;
  const locale_t before = uselocale(any_alphabet != nullptr ? any_alphabet : LC_GLOBAL_LOCALE);
  std::mbstate_t state{};
  while (!name.empty()) {
    wchar_t letter = 0;
    const std::size_t bytes = std::mbrtowc(&letter, name.data(), name.size(), &state);
    const bool is_bad = bytes == 0 || bytes > name.size();
    if (is_bad) state = {};
    lower += is_bad ? static_cast<wchar_t>(static_cast<unsigned char>(name.front()))
                    : static_cast<wchar_t>(towlower(static_cast<wint_t>(letter)));
    name.remove_prefix(is_bad ? 1 : bytes);
  }
  uselocale(before);
  return lower;
}

}  // namespace

tl::expected<std::string, Complaint> trainee_name(std::string_view typed) {
  const char* const last = typed.data() + typed.size();
  if (characters::first_bad_byte(typed.data(), last) != last) return no_name("a name that is not UTF-8 text");
  std::string name;
  std::size_t length = 0;
  for (const char* at = characters::skip_blanks(typed.data(), last); at != last;) {
    const std::string_view character(at, characters::character_length(at, last));
    if (characters::is_control(character)) return no_name("a name with a control character in it");
    name += character;
    ++length;
    const char* const end = at + character.size();
    at = characters::skip_blanks(end, last);
    if (at == end || at == last) continue;
    name += ' ';
    ++length;
  }
  if (name.empty()) return no_name("an empty name");
  if (length > longest_trainee_name)
    return tl::unexpected(Complaint{Problem::bad_name, "a name of " + std::to_string(length) + " characters",
                                    "at most " + std::to_string(longest_trainee_name), ""});
  return name;
}

bool same_trainee(std::string_view one, std::string_view other) {
  return one == other || in_lower_case(one) == in_lower_case(other);
}

}  // namespace landdrill
