// AnswerDraft: what a worksheet fills while it computes: outputs, the working line by line, notes, further sources.
#pragma once

#include <string>
#include <utility>

#include "core/worksheets/inputs.hpp"

namespace sumpwright::worksheets
{

class AnswerDraft
{
public:
    explicit AnswerDraft(const Inputs& inputs) : m_inputs(inputs) {}

    // An output of the worksheet. `estimate` on top of what the specification says.
    void put(const std::string& name, Value value, bool estimate = false)
    {
        const std::string unit = unitOf(value, m_inputs.currency());
        m_answer.outputs.push_back({name, std::move(value), unit, estimate});
    }
    // One line of the working, put together from texts and values: work("v = ", flow, " / ", area, " = ", v).
    template <class... Parts> void work(const Parts&... parts)
    {
        std::string line;
        ((line += text(parts)), ...);
        m_answer.working.push_back(std::move(line));
    }
    void note(std::string id) { m_answer.notes.push_back(std::move(id)); }
    void source(std::string key) { m_answer.sources.push_back(std::move(key)); }
    Answer take() { return std::move(m_answer); }

private:
    std::string text(const char* part) const { return part; }
    std::string text(const std::string& part) const { return part; }
    template <class Part> std::string text(const Part& part) const
    {
        return shown(Value(part), m_inputs.style(), m_inputs.currency());
    }

    const Inputs& m_inputs;
    Answer m_answer;
};

} // namespace sumpwright::worksheets
