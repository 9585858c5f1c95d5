// The command line: which command, with what. Each command has a file of its own.
#include <algorithm>
#include <exception>
#include <iostream>
#include <string>

#include <CLI/CLI.hpp>

#include "app/assess_command.hpp"
#ifdef SUMPWRIGHT_WINDOW
#include "app/window_command.hpp"
#endif
#include "app/work_command.hpp"

namespace
{

constexpr int faultOfProgram = 1;
constexpr int badInput = 2;

int run(int argc, char** argv)
{
    CLI::App program("Plans small recirculating aquaponic systems: water, head, duty point and load on the floor.",
                     "sumpwright");
    program.set_version_flag("--version", "sumpwright " SUMPWRIGHT_VERSION);

    sumpwright::app::WorkRequest work;
    CLI::App* workCommand = program.add_subcommand("work", "Answer one question of the trade, with working and source");
    workCommand->add_option("worksheet", work.worksheet, "Which worksheet, as --list names it");
    workCommand->add_option("inputs", work.inputs, "Its inputs as name=value, for example \"flow=1500 L/h\"");
    workCommand->add_flag("--json", work.json, "Answer as JSON");
    workCommand->add_flag("--list", work.list, "List the worksheets with their inputs and outputs");

    sumpwright::app::AssessRequest assess;
    CLI::App* assessCommand = program.add_subcommand("assess", "Compute everything for a plan file and print it");
    assessCommand->add_option("plan", assess.plan, "The plan file")->required();
    assessCommand->add_flag("--json", assess.json, "Print JSON");

#ifdef SUMPWRIGHT_WINDOW
    sumpwright::app::WindowRequest window;
    program.add_option("plan", window.plan, "The plan to open in the window; none: an empty plan");
    program.add_option("--picture", window.picture, "Write the plan as this PNG or SVG picture and open no window");
    program.add_flag("--dark", window.dark, "The picture in dark colours");
    program.add_option("--runs-by", window.runsBy, "Colour the picture's runs by \"velocity\" or \"head\"")
        ->check(CLI::IsMember({"velocity", "head"}));
#endif

    try {
        program.parse(argc, argv);
    } catch (const CLI::ParseError& stop) {
        if (stop.get_exit_code() == 0) // help or version, asked for
            return program.exit(stop);
        std::string line = stop.what();
        std::replace_if(
            line.begin(), line.end(), [](unsigned char c) { return c < 0x20; }, ' ');
        std::cerr << "sumpwright: " << line << "; see sumpwright --help\n";
        return badInput;
    }
    if (workCommand->parsed())
        return sumpwright::app::runWork(work, std::cout, std::cerr);
    if (assessCommand->parsed())
        return sumpwright::app::runAssess(assess, std::cout, std::cerr);
#ifdef SUMPWRIGHT_WINDOW
    return sumpwright::app::runWindow(argc, argv, window);
#else
    std::cout << program.help();
    return 0;
#endif
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception& fault) {
        std::cerr << "sumpwright: a fault of the program: " << fault.what() << '\n';
        return faultOfProgram;
    }
}
