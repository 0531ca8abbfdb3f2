using System.Text;

namespace Emberwright.Reports;

/// <summary>
/// Escapes &amp;, &lt; and &gt; inside the values of a PDF file's XMP packet. The packet keeps its length: the room is
/// taken from the indentation of its lines.
/// </summary>
internal static class XmpText
{
    private static readonly (string Open, string Close)[] Values =
        [("<rdf:li xml:lang=\"x-default\">", "</rdf:li></rdf:Alt>"), ("<rdf:li>", "</rdf:li></rdf:Seq>"), ("<xmp:CreatorTool>", "</xmp:CreatorTool>")];

    public static void Escape(byte[] file)
    {
        var from = file.AsSpan().LastIndexOf("<?xpacket begin"u8);
        var length = from < 0 ? -1 : file.AsSpan(from).IndexOf("<?xpacket end"u8);
        if (length < 0) return;
        // Latin-1 keeps every byte as one character, whatever the packet's own encoding.
        var packet = Encoding.Latin1.GetString(file, from, length);
        foreach (var (open, close) in Values) packet = EscapeBetween(packet, open, close);
        packet = Shorten(packet, length);
        Encoding.Latin1.GetBytes(packet).CopyTo(file, from);
    }

    private static string EscapeBetween(string packet, string open, string close)
    {
        var made = new StringBuilder();
        var at = 0;
        while (packet.IndexOf(open, at, StringComparison.Ordinal) is >= 0 and var start)
        {
            var value = start + open.Length;
            var end = packet.IndexOf(close, value, StringComparison.Ordinal);
            if (end < 0) break;
            made.Append(packet, at, value - at);
            made.Append(packet[value..end].Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;"));
            at = end;
        }

        return made.Append(packet, at, packet.Length - at).ToString();
    }

    private static string Shorten(string packet, int length)
    {
        var surplus = packet.Length - length;
        while (surplus > 0 && packet.IndexOf("\n  ", StringComparison.Ordinal) is >= 0 and var line)
        {
            packet = packet.Remove(line + 1, 1);
            surplus--;
        }

        if (surplus <= 0) return packet;
        // More signs than indentation: keep the XML sound and the length, give up the signs.
        return Shorten(packet.Replace("&amp;", "+").Replace("&lt;", "(").Replace("&gt;", ")").PadRight(length), length);
    }
}
