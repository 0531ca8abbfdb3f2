using System.ComponentModel;
using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Erases a person on request from the firm's book and from the files of their visits.</summary>
internal sealed class EraseCommand(Terminal terminal, TimeProvider time) : Command<EraseCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(1, "<FILES>")]
        [Description("Visit files, or folders of them; those of the person are written anew")]
        public required string[] Files { get; init; }

        [CommandOption("--name <NAME>")]
        [Description("The person's name")]
        public required string Name { get; init; }

        [CommandOption("--address <ADDRESS>")]
        [Description("The address, where others have the same name")]
        public string? Address { get; init; }

        [CommandOption("--asked <WORDS>")]
        [Description("Who asked, and how")]
        public string? Asked { get; init; }

        public override ValidationResult Validate() => string.IsNullOrWhiteSpace(Name) ? ValidationResult.Error("Name the person: --name \"Ottilie Brandreth\".") : ValidationResult.Success();
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        var files = new VisitFiles(terminal).Read(settings.Files);
        var book = FirmBook.Fold(journal);
        var first = new PersonErased([settings.Name], [settings.Address], []);
        var own = files.Visits.Select(v => (Visit: v, Line: SummaryOf.Visit(v))).Where(v => first.IsOf(v.Line)).ToArray();
        var records = book.Of<Customer>().Where(c => c.Body.Name == settings.Name && (settings.Address is null || c.Body.Address is null || c.Body.Address == settings.Address)).ToArray();
        var person = new PersonErased(
            [settings.Name], [settings.Address, .. own.Select(v => v.Line.Address), .. records.Select(r => r.Body.Address)],
            [.. own.Select(v => v.Line.Phone), .. records.SelectMany(r => new[] { r.Body.Phone, r.Body.Mail })], book.People.Select(p => p.Title));
        try
        {
            var gone = own.SelectMany(v => Erase(files.PathOf(v.Visit), v.Visit, person, settings)).ToArray();
            if (records.Length > 0 || File.Exists(settings.Book)) EraseFromBook(settings, book, [.. records.Select(r => r.Body.Id).Distinct()], person, gone, own);
            terminal.Console.WriteLine($"Erased from {own.Length} visits and {records.Select(r => r.Body.Id).Distinct().Count()} records. Seals still hold; files handed over before do not change.");
            return own.Length + records.Length == 0 ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private IReadOnlyList<string> Erase(string path, Visit visit, PersonErased person, Settings settings)
    {
        var erasure = Erasure.Of(visit, person, settings.Asked);
        if (erasure.Says is { } says) BookFile.Write(path, new BookFile(terminal, time).With(erasure.Journal, [says], settings.Author), "FILES");
        return erasure.Blobs;
    }

    private void EraseFromBook(Settings settings, FirmBook book, string[] customers, PersonErased person, IReadOnlyList<string> gone, (Visit Visit, VisitSummary Line)[] own)
    {
        var keys = own.GroupBy(v => v.Line.Stove).Where(g => g.Key.StartsWith("house/", StringComparison.Ordinal)).ToArray();
        var erasure = Erasure.Of(book, customers, person, settings.Asked, keys.ToDictionary(g => g.Key, g => "visit/" + g.First().Visit.Id), gone);
        var joins = keys.SelectMany(g => g.Skip(1).Select(v => (EntryBody)new Joined("stove", "visit/" + v.Visit.Id, "visit/" + g.First().Visit.Id)));
        BookFile.Write(settings.Book, new BookFile(terminal, time).With(erasure.Journal, [erasure.Says!, .. customers.Select(id => new Archived("customer", id)), .. joins], settings.Author), "BOOK");
    }
}
