using System.ComponentModel;
using System.Text;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>The stove card of a visit: written out as a file of its own, or one put into the visit as a new entry.</summary>
internal sealed class CardCommand(Terminal terminal, TimeProvider time) : Command<CardCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<FILE>")]
        [Description("The visit file")]
        public required string File { get; init; }

        [CommandOption("-o|--output <FILE>")]
        [Description("Write the visit's card to this file")]
        public string? Output { get; init; }

        [CommandOption("--take <CARD>")]
        [Description("Put this card into the visit; it must be of the visit's construction")]
        public string? Take { get; init; }

        [CommandOption("--author <NAME>")]
        [Description("Who writes; stands under the entry")]
        [DefaultValue("terminal")]
        public string Author { get; init; } = "terminal";

        public override ValidationResult Validate() => Output is not null && Take is not null ? ValidationResult.Error("Either write the card (--output) or take one in (--take).") : ValidationResult.Success();
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            var file = VisitFile.Read(File.ReadAllText(settings.File, Encoding.UTF8));
            if (Visit.Fold(file.Journal).Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is null)
            {
                foreach (var problem in Findings.WhyNone(file)) terminal.Error.WriteLine($"{settings.File}: {problem}");
                return ExitCodes.BadInput;
            }

            return settings.Take is { } card ? Take(settings, file, appliance, card) : Give(settings, appliance);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or OutputException)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private int Give(Settings settings, ApplianceBody appliance)
    {
        if (appliance.CardJson is not { } json || Read(settings.File, json) is not { } card)
        {
            terminal.Error.WriteLine($"{settings.File} holds no card. Put one in with --take CARD.json, or note what you know at the stove.");
            return ExitCodes.Findings;
        }

        if (settings.Output is { } output) Terminal.Write(output, Encoding.UTF8.GetBytes(CardFile.Write(card)), "--output");
        else terminal.Out.WriteLine(CardFile.Write(card));
        return ExitCodes.Ok;
    }

    private int Take(Settings settings, VisitFile file, ApplianceBody appliance, string path)
    {
        if (Read(path, File.ReadAllText(path, Encoding.UTF8)) is not { } card) return ExitCodes.BadInput;
        if (card.Pattern != appliance.Pattern)
        {
            terminal.Error.WriteLine($"{path} is of {card.Pattern}, the stove of {appliance.Pattern}. Take a card of the same construction, or correct the visit's appliance first.");
            return ExitCodes.BadInput;
        }

        var book = new BookFile(terminal, time);
        BookFile.Write(settings.File, book.With(file.Journal, [appliance.With(card)], settings.Author), "FILE");
        terminal.Error.WriteLine($"{settings.File}: card {card.Name} put in as a new entry.");
        return ExitCodes.Ok;
    }

    private StoveCard? Read(string path, string json)
    {
        var card = CardFile.Read(json, out var problems);
        foreach (var problem in problems) terminal.Error.WriteLine($"{path}: {problem.Path}: {problem.Message} {problem.Remedy}");
        return card;
    }
}
