// Memo: the last input and output of one stage. The stage runs when, and only when, its input differs from the last;
// an output equal to the last keeps its pointer, so that stages after it need not run either.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <utility>

namespace sumpwright::assessment
{

template <class Input, class Output> class Memo
{
public:
    template <class Compute> std::shared_ptr<const Output> get(Input input, Compute&& compute)
    {
        if (m_input && *m_input == input)
            return m_output;
        ++m_runs;
        auto fresh = std::make_shared<const Output>(compute(std::as_const(input)));
        if (!m_output || !(*m_output == *fresh))
            m_output = std::move(fresh);
        m_input = std::move(input);
        return m_output;
    }
    std::uint64_t runs() const { return m_runs; }

private:
    std::optional<Input> m_input;
    std::shared_ptr<const Output> m_output;
    std::uint64_t m_runs = 0;
};

} // namespace sumpwright::assessment
