using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Reads the name of a kind of table.</summary>
internal static class Tables
{
    public static TableKind? Kind(Terminal terminal, string name)
    {
        if (EnumWords.Find<TableKind>(name) is { } kind) return kind;
        terminal.Error.WriteLine($"--kind is '{name}'; it takes {EnumWords.All<TableKind>()}.");
        return null;
    }
}
