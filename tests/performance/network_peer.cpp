#include "tests/performance/network_peer.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <variant>
#include <vector>

#include <kinsol/kinsol.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_sparse.h>

#include "core/hydraulics/kernel/link_law.hpp"

namespace sumpwright::performance
{
namespace
{

using hydraulics::kernel::LinkLaw;

struct Equations {
    struct Link {
        std::size_t from, to;
        LinkLaw law;
    };
    std::vector<Link> links;
    std::vector<double> grade;         // by node; of junctions whatever it starts from
    std::vector<std::ptrdiff_t> place; // by node: among the unknowns, -1 where the grade is held
    std::size_t unknowns = 0;
};

Equations equationsOf(const hydraulics::Network& network)
{
    Equations equations;
    const double viscosity = units::inSquareMetresPerSecond(network.viscosity);
    for (const auto& link : network.links) {
        LinkLaw law;
        if (const auto* pipe = std::get_if<hydraulics::PipeLink>(&link.part))
            law = LinkLaw::ofPipe({units::inMetres(pipe->bore), units::inMetres(pipe->length),
                                   units::inMetres(pipe->roughness), pipe->sumK},
                                  viscosity, pipe->oneWay, 0.0);
        if (const auto* pump = std::get_if<hydraulics::PumpLink>(&link.part))
            law = LinkLaw::ofPump(pump->curve, pump->speed);
        equations.links.push_back({link.from, link.to, law});
    }
    equations.unknowns = equations.links.size();
    for (const auto& node : network.nodes) {
        const auto* held = std::get_if<hydraulics::FixedGrade>(&node);
        equations.grade.push_back(held ? units::inMetres(held->grade) : 1.0);
        equations.place.push_back(held ? -1 : static_cast<std::ptrdiff_t>(equations.unknowns++));
    }
    return equations;
}

double gradeAt(const Equations& equations, std::size_t node, const double* x)
{
    return equations.place[node] < 0 ? equations.grade[node] : x[equations.place[node]];
}

// Row k: the misfit of link k, m. Then, by junction, what flows in less what flows out, L/s: of the same size as a
// head.
constexpr double perCubicMetre = 1000.0;

int misfits(N_Vector unknowns, N_Vector rows, void* data)
{
    auto& equations = *static_cast<Equations*>(data);
    const double* x = NV_DATA_S(unknowns);
    double* row = NV_DATA_S(rows);
    std::fill(row, row + equations.unknowns, 0.0);
    for (std::size_t k = 0; k < equations.links.size(); ++k) {
        auto& link = equations.links[k];
        row[k] = gradeAt(equations, link.from, x) - gradeAt(equations, link.to, x) - link.law.at(x[k]).loss;
        if (equations.place[link.from] >= 0)
            row[equations.place[link.from]] -= perCubicMetre * x[k];
        if (equations.place[link.to] >= 0)
            row[equations.place[link.to]] += perCubicMetre * x[k];
    }
    return 0;
}

// By columns: a flow's own law and its two balances; a grade's links, which stay as they are.
int slopes(N_Vector unknowns, N_Vector, SUNMatrix matrix, void* data, N_Vector, N_Vector)
{
    auto& equations = *static_cast<Equations*>(data);
    const double* x = NV_DATA_S(unknowns);
    sunindextype* start = SM_INDEXPTRS_S(matrix);
    sunindextype* row = SM_INDEXVALS_S(matrix);
    double* value = SM_DATA_S(matrix);
    sunindextype at = 0;
    std::vector<std::vector<std::pair<std::size_t, double>>> byGrade(equations.unknowns - equations.links.size());
    const auto put = [&](std::ptrdiff_t where, double number) {
        row[at] = static_cast<sunindextype>(where);
        value[at++] = number;
    };
    for (std::size_t k = 0; k < equations.links.size(); ++k) {
        auto& link = equations.links[k];
        start[k] = at;
        put(static_cast<std::ptrdiff_t>(k), -link.law.at(x[k]).slope);
        const auto from = equations.place[link.from], to = equations.place[link.to];
        if (from >= 0) {
            put(from, -perCubicMetre);
            byGrade[from - static_cast<std::ptrdiff_t>(equations.links.size())].emplace_back(k, 1.0);
        }
        if (to >= 0) {
            put(to, perCubicMetre);
            byGrade[to - static_cast<std::ptrdiff_t>(equations.links.size())].emplace_back(k, -1.0);
        }
    }
    for (std::size_t j = 0; j < byGrade.size(); ++j) {
        start[equations.links.size() + j] = at;
        for (const auto& [k, number] : byGrade[j])
            put(static_cast<std::ptrdiff_t>(k), number);
    }
    start[equations.unknowns] = at;
    return 0;
}

// What the library hands out, each with its own way of being given back.
struct Kinsol {
    SUNContext context = nullptr;
    N_Vector unknowns = nullptr, scale = nullptr, rows = nullptr;
    SUNMatrix matrix = nullptr;
    SUNLinearSolver linear = nullptr;
    void* memory = nullptr;

    explicit Kinsol(Equations& equations)
    {
        const auto size = static_cast<sunindextype>(equations.unknowns);
        SUNContext_Create(nullptr, &context);
        unknowns = N_VNew_Serial(size, context);
        scale = N_VNew_Serial(size, context);
        rows = N_VNew_Serial(size, context);
        N_VConst(1.0, scale);
        for (std::size_t i = 0; i < equations.unknowns; ++i)
            NV_Ith_S(unknowns, static_cast<sunindextype>(i)) =
                i < equations.links.size() ? equations.links[i].law.start() : 1.0;
        memory = KINCreate(context);
        KINInit(memory, misfits, unknowns);
        KINSetUserData(memory, &equations);
        matrix = SUNSparseMatrix(size, size, static_cast<sunindextype>(5 * equations.links.size()), CSC_MAT, context);
        linear = SUNLinSol_KLU(unknowns, matrix, context);
        KINSetLinearSolver(memory, linear, matrix);
        KINSetJacFn(memory, slopes);
        KINSetMaxSetupCalls(memory, 1); // a new Jacobian every step
        KINSetFuncNormTol(memory, 1e-9);
        KINSetScaledStepTol(memory, 1e-14);
        KINSetMaxNewtonStep(memory, 1e6);
        KINSetNumMaxIters(memory, 400);
        KINSetPrintLevel(memory, 0);
    }
    Kinsol(const Kinsol&) = delete;
    Kinsol& operator=(const Kinsol&) = delete;
    ~Kinsol()
    {
        KINFree(&memory);
        SUNLinSolFree(linear);
        SUNMatDestroy(matrix);
        for (N_Vector vector : {unknowns, scale, rows})
            N_VDestroy(vector);
        SUNContext_Free(&context);
    }
};

} // namespace

PeerAnswer solveByPeer(const hydraulics::Network& network, const hydraulics::NetworkResult& answer)
{
    Equations equations = equationsOf(network);
    Kinsol kinsol(equations);
    PeerAnswer result;
    result.solved = KINSol(kinsol.memory, kinsol.unknowns, KIN_NONE, kinsol.scale, kinsol.scale) >= 0;
    KINGetNumNonlinSolvIters(kinsol.memory, &result.steps);
    misfits(kinsol.unknowns, kinsol.rows, &equations);
    result.residual = N_VMaxNorm(kinsol.rows);
    for (std::size_t k = 0; k < equations.links.size(); ++k)
        result.largestDifference =
            std::max(result.largestDifference, std::fabs(NV_Ith_S(kinsol.unknowns, static_cast<sunindextype>(k)) -
                                                         units::inCubicMetresPerSecond(answer.links[k].flow)));
    return result;
}

} // namespace sumpwright::performance
