using Emberwright.Reports.FromVisit;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli.Tests;

/// <summary>A folder with a demo visit signed as the app signs it, and its report as the terminal prints it. Deleted when done.</summary>
internal sealed class SignedVisit : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("emberwright-signed");

    public SignedVisit(string name = "healthy-service", params string[] printing)
    {
        var findings = Findings.Of(VisitFile.Read(System.IO.File.ReadAllText(Run.Demo(name))))!;
        var at = findings.Visit.Journal.Entries[^1].At.AddMinutes(5);
        var factory = new EntryFactory("phone-test", "R. Sorrel", new Stopped(at), Guid.CreateVersion7);
        System.IO.File.WriteAllText(File, VisitFile.Write(factory.Append(findings.Visit.Journal, Seal.Over(findings.Visit.Journal, Engine.Version, SealedFigures.Of(findings.Beliefs, findings.Visit)))));
        Print = Run.Of(["report", File, "-o", Pdf, .. printing]);
    }

    public string File => Path.Combine(_folder.FullName, "visit.jsonl");

    public string Pdf => Path.Combine(_folder.FullName, "report.pdf");

    public Run Print { get; }

    /// <summary>Another file beside them.</summary>
    public string Beside(string name, byte[] bytes)
    {
        var path = Path.Combine(_folder.FullName, name);
        System.IO.File.WriteAllBytes(path, bytes);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private sealed class Stopped(DateTimeOffset at) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => at.ToUniversalTime();

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.CreateCustomTimeZone("test", at.Offset, "test", "test");
    }
}
