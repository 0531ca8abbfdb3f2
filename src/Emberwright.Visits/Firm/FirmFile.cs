using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>The firm's book as a file: the same JSON Lines as a visit's, under another header.</summary>
public static class FirmFile
{
    /// <summary>Reads the text of a book. It never throws for what the text says.</summary>
    public static VisitFile Read(string text) => VisitFile.Read(text, JournalFormat.Firm);

    /// <summary>The text of a book.</summary>
    public static string Write(VisitJournal journal) => VisitFile.Write(journal);

    /// <summary>A book with nothing in it.</summary>
    /// <param name="firm">Id of the firm.</param>
    public static VisitJournal Begin(string firm) => VisitJournal.Begin(firm, JournalFormat.Firm);
}
