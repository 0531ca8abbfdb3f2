using System.ComponentModel;
using System.Text;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands.FirmsBook;

/// <summary>Writes book and visits as one archive.</summary>
internal sealed class PackCommand(Terminal terminal, TimeProvider time) : Command<PackCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<FILES>")]
        [Description("Visit files, or folders of them")]
        public required string[] Files { get; init; }

        [CommandOption("--book <FILE>")]
        [Description("The firm's book")]
        public string? Book { get; init; }

        [CommandOption("--blobs <FOLDER>")]
        [Description("Folder of photos and other bytes, each named by its SHA-256, as unpack writes it")]
        public string? Blobs { get; init; }

        [CommandOption("-o|--output <FILE>")]
        [Description("The archive")]
        public required string Output { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var files = new VisitFiles(terminal).Read(settings.Files);
        try
        {
            var archive = new Archive(settings.Book is null ? null : File.ReadAllText(settings.Book, Encoding.UTF8), files.Visits.ToDictionary(v => v.Id, v => VisitFile.Write(v.Journal)), BlobsOf(settings.Blobs));
            Terminal.Write(settings.Output, archive.Write(time.GetLocalNow()), "--output");
            terminal.Error.WriteLine($"{settings.Output}: {archive.Visits.Count} visits{(archive.Book is null ? "" : " and the book")}.");
            return files.Troubled ? ExitCodes.BadInput : ExitCodes.Ok;
        }
        catch (Exception e) when (e is OutputException or IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    // A file that is not named by the hash of its bytes is no blob and stays where it is.
    private static Dictionary<string, byte[]> BlobsOf(string? folder) => folder is null ? []
        : Directory.EnumerateFiles(folder).Select(path => (Name: Path.GetFileName(path), Bytes: File.ReadAllBytes(path)))
            .Where(file => Blob.ReferenceTo(file.Bytes) == "sha256:" + file.Name).ToDictionary(file => file.Name, file => file.Bytes);
}

/// <summary>Unpacks an archive, or one visit of it, into a folder of files.</summary>
internal sealed class UnpackCommand(Terminal terminal) : Command<UnpackCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<ARCHIVE>")]
        [Description("The archive")]
        public required string File { get; init; }

        [CommandArgument(1, "<FOLDER>")]
        [Description("A folder, made when it is not there")]
        public required string Folder { get; init; }

        [CommandOption("--visit <ID>")]
        [Description("Only this visit, with what lies beside it")]
        public string? Visit { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            var (archive, problems) = Archive.Read(File.ReadAllBytes(settings.File));
            foreach (var problem in problems) terminal.Error.WriteLine($"{settings.File}: {problem}");
            if (settings.Visit is { } wanted)
            {
                if (archive.Only(wanted) is not { } one)
                {
                    terminal.Error.WriteLine($"{settings.File} holds no visit {wanted}. It holds {archive.Visits.Count}: {string.Join(", ", archive.Visits.Keys.Order(StringComparer.Ordinal).Take(10))}{(archive.Visits.Count > 10 ? ", …" : "")}.");
                    return ExitCodes.BadInput;
                }

                archive = one;
            }

            Directory.CreateDirectory(Path.Combine(settings.Folder, "visits"));
            if (archive.Book is { } book) Terminal.Write(Path.Combine(settings.Folder, "firm.jsonl"), Encoding.UTF8.GetBytes(book), "FOLDER");
            foreach (var (id, text) in archive.Visits) Terminal.Write(Path.Combine(settings.Folder, "visits", Archive.FileName(id) + ".jsonl"), Encoding.UTF8.GetBytes(text), "FOLDER");
            if (archive.Blobs.Count > 0) Directory.CreateDirectory(Path.Combine(settings.Folder, "blobs"));
            foreach (var (hash, bytes) in archive.Blobs) Terminal.Write(Path.Combine(settings.Folder, "blobs", Archive.FileName(hash)), bytes, "FOLDER");
            terminal.Error.WriteLine($"{archive.Visits.Count} visits in {settings.Folder}.");
            return problems.Count > 0 ? ExitCodes.BadInput : ExitCodes.Ok;
        }
        catch (Exception e) when (e is InvalidDataException or OutputException or IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{settings.File}: {e.Message}");
            return ExitCodes.BadInput;
        }
    }
}

/// <summary>Writes what a maker asks for before it pays, as one ZIP file.</summary>
internal sealed class WarrantyCommand(Terminal terminal, TimeProvider time) : Command<PackCommand.Settings>
{
    public override int Execute(CommandContext context, PackCommand.Settings settings, CancellationToken cancellationToken)
    {
        if (new VisitFiles(terminal).Read(settings.Files).OfOneStove() is not { } visits) return ExitCodes.BadInput;
        if (new BookFile(terminal, time).Read(settings.Book) is not { } journal) return ExitCodes.BadInput;
        try
        {
            Terminal.Write(settings.Output, Pack.Zip(WarrantyPack.Files(visits, FirmBook.Fold(journal).Firm, _ => null)), "--output");
            var missing = WarrantyPack.Missing(visits);
            terminal.Error.WriteLine(missing.Count > 0 ? $"{settings.Output} lacks {string.Join("; ", missing)}." : settings.Output);
            return missing.Count > 0 ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (OutputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }
}
