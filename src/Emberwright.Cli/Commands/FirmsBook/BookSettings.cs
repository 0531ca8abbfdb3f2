using System.ComponentModel;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>What a command about the firm's book takes.</summary>
internal class BookSettings : CommandSettings
{
    [CommandArgument(0, "<BOOK>")]
    [Description("The firm's book (JSON Lines); one that is not there yet is begun")]
    public required string Book { get; init; }

    [CommandOption("--author <NAME>")]
    [Description("Who writes; stands under each entry")]
    [DefaultValue("terminal")]
    public string Author { get; init; } = "terminal";
}
