using System.Text;
using Emberwright.Visits;
using Emberwright.Visits.Firm;
using Emberwright.Visits.Journal;

namespace Emberwright.Cli;

/// <summary>Several visit files at once. One visit in two files is put together; a folder stands for the visit files in it.</summary>
internal sealed class VisitFiles(Terminal terminal)
{
    private readonly Dictionary<string, (string Path, VisitJournal Journal)> journals = [];

    /// <summary>True when a file or a line could not be read; each was said.</summary>
    public bool Troubled { get; private set; }

    /// <summary>The visits, by day.</summary>
    public IReadOnlyList<Visit> Visits => [.. journals.Values.Select(j => Visit.Fold(j.Journal)).OrderBy(v => v.Day).ThenBy(v => v.Id, StringComparer.Ordinal)];

    /// <summary>The file a visit came from.</summary>
    public string PathOf(Visit visit) => journals[visit.Id].Path;

    /// <summary>Reads files and folders.</summary>
    public VisitFiles Read(IEnumerable<string> paths)
    {
        foreach (var path in paths.SelectMany(Expand))
            if (Text(path) is { } text) Add(path, VisitFile.Read(text));
        return this;
    }

    /// <summary>The visits of one stove; null, and it is said, when there are none or they are of several.</summary>
    public IReadOnlyList<Visit>? OfOneStove()
    {
        var stoves = Visits.GroupBy(StoveKey.Of).ToArray();
        if (stoves.Length == 1) return [.. stoves[0]];
        terminal.Error.WriteLine(stoves.Length == 0
            ? "No visit was read. Name the visit files of one stove."
            : $"These are visits to {stoves.Length} stoves: {string.Join("; ", stoves.Select(s => PathOf(s.First())))}. Name the visit files of one stove; maker and serial number tell stoves apart.");
        return null;
    }

    private void Add(string path, VisitFile file)
    {
        foreach (var problem in file.Problems)
        {
            Troubled = true;
            terminal.Error.WriteLine($"{path}:{(problem.Line > 0 ? problem.Line + ":" : "")} {(problem.Field.Length > 0 ? problem.Field + ": " : "")}{problem.Message}{(problem.Value.Length > 0 ? $" [{problem.Value}]" : "")} {problem.Remedy}");
        }

        var id = file.Journal.Header.Visit;
        if (id.Length == 0) return;
        journals[id] = journals.TryGetValue(id, out var held) ? (held.Path, held.Journal.Merge(file.Journal)) : (path, file.Journal);
    }

    private static IEnumerable<string> Expand(string path) =>
        Directory.Exists(path) ? Directory.EnumerateFiles(path, "*.jsonl", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [path];

    private string? Text(string path)
    {
        try
        {
            return path == VisitSettings.StandardInput ? terminal.In.ReadToEnd() : File.ReadAllText(path, Encoding.UTF8);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Troubled = true;
            terminal.Error.WriteLine($"{path}: cannot be read ({e.Message.TrimEnd('.')}). Give the path of a visit file, such as demo/visits/healthy-service.jsonl.");
            return null;
        }
    }
}
