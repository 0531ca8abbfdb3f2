using Emberwright.Diagnosis;
using Emberwright.Visits;
using Spectre.Console;

namespace Emberwright.Cli.Commands;

/// <summary>Safety stops come before anything else a command says.</summary>
internal static class Stops
{
    public static void Write(Terminal terminal, Findings findings)
    {
        foreach (var stop in findings.Beliefs.Stops) Write(terminal, stop);
    }

    public static void Write(Terminal terminal, StandingStop stop)
    {
        terminal.Console.WriteLine($"STOP: {stop.Words}");
        terminal.Console.WriteLine($"      Released by: {stop.ReleasedBy}. Source: {stop.Source}.");
    }
}
