using System.Text;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli;

/// <summary>The firm's book on disk. New entries are written behind what is there; a line once written is never changed.</summary>
internal sealed class BookFile(Terminal terminal, TimeProvider time)
{
    private const string Device = "terminal";

    /// <summary>Reads a book; null, and it is said, when it cannot be read. A book that is not there yet is empty.</summary>
    public VisitJournal? Read(string? path)
    {
        if (path is null || !File.Exists(path)) return FirmFile.Begin(Guid.CreateVersion7(time.GetUtcNow()).ToString());
        try
        {
            var file = FirmFile.Read(File.ReadAllText(path, Encoding.UTF8));
            foreach (var problem in file.Problems) terminal.Error.WriteLine($"{path}: {problem}");
            if (file.Journal.Header.Visit.Length > 0) return file.Journal;
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{path}: cannot be read ({e.Message.TrimEnd('.')}). Give the path of a firm's book.");
            return null;
        }
    }

    /// <summary>The journal with more entries, in the name of an author.</summary>
    public VisitJournal With(VisitJournal journal, IEnumerable<EntryBody> bodies, string author)
    {
        var factory = new EntryFactory(Device, author, time, at => Guid.CreateVersion7(at));
        return bodies.Aggregate(journal, factory.Append);
    }

    /// <summary>Writes a journal whole, through a second file, so that a power cut leaves the old or the new one.</summary>
    public static void Write(string path, VisitJournal journal, string option)
    {
        var beside = path + ".new";
        Terminal.Write(beside, Encoding.UTF8.GetBytes(FirmFile.Write(journal)), option);
        try
        {
            File.Move(beside, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"{path}: cannot be written ({e.Message.TrimEnd('.')}). What was to be written stands in {beside}.", e);
        }
    }
}
