using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Emberwright.Trials;

/// <summary>
/// One shard's rows as lines of a file, appended one by one, so that a trial that was stopped goes on where it stood. Several
/// shards share a folder.
/// </summary>
/// <typeparam name="T">A row.</typeparam>
/// <param name="folder">Folder of the trial.</param>
/// <param name="name">File name without shard and ending.</param>
/// <param name="part">Which shard, counted from 1.</param>
/// <param name="of">How many there are.</param>
/// <param name="type">How a row is written.</param>
internal sealed class Shard<T>(string folder, string name, int part, int of, JsonTypeInfo<T> type)
{
    private string FilePath => Path.Combine(folder, $"{name}.{part}of{of}.jsonl");

    /// <summary>True when a piece of work is this shard's.</summary>
    public bool Owns(int index) => index % of == part - 1;

    /// <summary>Rows of all shards in the folder; a last line cut short is left out.</summary>
    public static IReadOnlyList<T> ReadAll(string folder, string name, JsonTypeInfo<T> type) => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder, $"{name}.*.jsonl").Order(StringComparer.Ordinal).SelectMany(f => Read(f, type))]
        : [];

    /// <summary>Does what is not done yet, appending each row.</summary>
    /// <param name="done">True for work whose row is there already.</param>
    /// <param name="work">Pieces of work, in order.</param>
    /// <param name="said">Told after each row.</param>
    /// <returns>Number of pieces of work that failed.</returns>
    public int Run(Func<int, bool> done, IReadOnlyList<Func<T>> work, Action<int> said)
    {
        Directory.CreateDirectory(folder);
        CloseLine();
        using var file = new StreamWriter(FilePath, append: true) { AutoFlush = true };
        var (count, failed) = (0, 0);
        for (var k = 0; k < work.Count; k++)
        {
            if (!Owns(k) || done(k)) continue;
            try
            {
                file.WriteLine(JsonSerializer.Serialize(work[k](), type));
                said(++count);
            }
            catch (Exception failure) when (failure is not (IOException or OutOfMemoryException))
            {
                // One stove that the engine cannot take must not end a night's run; it is tried again on the next one.
                Console.Error.WriteLine($"work {k} failed: {failure}");
                failed++;
            }
        }

        return failed;
    }

    // A process that was killed may have left half a line.
    private void CloseLine()
    {
        if (!File.Exists(FilePath)) return;
        var text = File.ReadAllText(FilePath);
        if (text.Length > 0 && text[^1] != '\n') File.WriteAllText(FilePath, text[..(text.LastIndexOf('\n') + 1)]);
    }

    private static IEnumerable<T> Read(string file, JsonTypeInfo<T> type)
    {
        // Another shard may be writing.
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new StreamReader(stream);
        var lines = reader.ReadToEnd().Split('\n');
        return [.. lines[..^1].Where(l => l.Length > 0).Select(l => JsonSerializer.Deserialize(l, type)!)];
    }
}
