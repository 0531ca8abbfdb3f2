using System.Security.Cryptography;
using System.Text;

namespace Emberwright.Reports;

/// <summary>
/// Makes a PDF file depend on its content alone. The library draws four things at random: the six letters that mark a
/// font's subset, two ids in the XMP packet, the file id in the trailer. They are overwritten, length for length, by
/// letters from the hash of the rest. The XMP packet's text is made valid XML on the way, which the library forgets.
/// </summary>
internal static class SameBytes
{
    private const int TagLength = 6;
    private const int UuidLength = 36;
    private const int FileIdLength = 32;

    /// <summary>Overwrites the marks in place.</summary>
    /// <exception cref="InvalidOperationException">A mark is not where the library has put it so far.</exception>
    public static byte[] Of(byte[] file)
    {
        XmpText.Escape(file);
        var tags = Tags(file);
        List<(int At, int Length)> marks = [.. tags.SelectMany(t => t.Places.Select(p => (At: p, Length: TagLength)))
            .Concat([(After(file, "<xmpMM:DocumentID>uuid:"), UuidLength), (After(file, "<xmpMM:InstanceID>uuid:"), UuidLength)])
            .Concat([(After(file, "/ID[<"), FileIdLength), (After(file, "/ID[<") + FileIdLength + 2, FileIdLength)])];
        foreach (var (at, length) in marks) file.AsSpan(at, length).Fill((byte)'0');
        var hash = SHA256.HashData(file);

        for (var i = 0; i < tags.Count; i++)
        {
            var letters = SHA256.HashData([.. hash, (byte)i]).Take(TagLength).Select(b => (byte)('A' + b % 26)).ToArray();
            foreach (var place in tags[i].Places) letters.CopyTo(file, place);
        }

        var id = new Guid(hash.AsSpan(0, 16));
        Write(file, marks[^4].At, id.ToString("D"));
        Write(file, marks[^3].At, id.ToString("D"));
        Write(file, marks[^2].At, id.ToString("N").ToUpperInvariant());
        Write(file, marks[^1].At, id.ToString("N").ToUpperInvariant());
        return file;
    }

    // Each subset tag with every place it stands, in order of first appearance.
    private static List<(string Tag, List<int> Places)> Tags(byte[] file)
    {
        var name = "+Emberwright#20Sans"u8;
        var found = new List<(string Tag, List<int> Places)>();
        for (var at = 0; file.AsSpan(at).IndexOf(name) is >= 0 and var step; at += step + name.Length)
        {
            var place = at + step - TagLength;
            if (place < 1 || file[place - 1] != '/') continue;
            var tag = Encoding.ASCII.GetString(file, place, TagLength);
            if (found.FindIndex(f => f.Tag == tag) is >= 0 and var known) found[known].Places.Add(place);
            else found.Add((tag, [place]));
        }

        return found;
    }

    private static int After(byte[] file, string words)
    {
        var at = file.AsSpan().LastIndexOf(Encoding.ASCII.GetBytes(words));
        return at >= 0 ? at + words.Length
            : throw new InvalidOperationException($"The PDF library no longer writes '{words}', so the file would differ from run to run. Adapt SameBytes to its new form.");
    }

    private static void Write(byte[] file, int at, string words) => Encoding.ASCII.GetBytes(words).CopyTo(file, at);
}
