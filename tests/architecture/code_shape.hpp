// Functions and members found by counting braces, without understanding C++: what opens with a parenthesis before it
// is taken for a function, what opens behind namespace, class, struct, enum or union is looked into. Good enough for
// this project's own style; a function made by a macro without braces is not seen.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sumpwright::architecture
{

struct FunctionSpan {
    std::string head; // the text before its brace, in one line
    std::size_t firstLine, lastLine;

    std::size_t lines() const { return lastLine - firstLine + 1; }
};

struct Member {
    std::string statement; // in one line, without the semicolon
    std::size_t line;
};

struct CodeShape {
    std::vector<FunctionSpan> functions;
    std::vector<Member> members; // statements directly inside a class or struct
};

CodeShape shapeOf(std::string_view text);

// The name a member statement declares; empty when the statement is a function, an alias or a friend.
std::string memberName(const std::string& statement);

} // namespace sumpwright::architecture
