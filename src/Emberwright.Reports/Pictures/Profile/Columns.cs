using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>
/// Where room, ports and outdoors stand on the x axis: each part as wide as its words need, not to scale,
/// and what is left over shared out in proportion.
/// </summary>
/// <param name="Room">x of the room.</param>
/// <param name="Ports">x of each port.</param>
/// <param name="Outdoors">x of outdoors.</param>
internal sealed record Columns(double Room, ImmutableArray<double> Ports, double Outdoors)
{
    /// <summary>Half the flat stretch of the path at a port.</summary>
    public const double Flat = 8;

    /// <summary>x by index: −1 is the room, the number of ports is outdoors.</summary>
    public double this[int port] => port < 0 ? Room : port < Ports.Length ? Ports[port] : Outdoors;

    /// <summary>Left and right limits of a port's own column.</summary>
    public (double Left, double Right) Around(int port) =>
        ((this[port - 1] + this[port]) / 2, port == Ports.Length - 1 ? Outdoors : (this[port] + this[port + 1]) / 2);

    /// <summary>Lays the columns out.</summary>
    /// <param name="room">x of the room.</param>
    /// <param name="width">Width from room to outdoors to fill, if the words allow.</param>
    /// <param name="partWidths">Width each part needs, from room to outdoors.</param>
    /// <param name="nameWidths">Width of the names of room, ports and outdoors.</param>
    /// <param name="overhang">How far the name of outdoors may stand out to the right of its x.</param>
    public static Columns Fit(double room, double width, IReadOnlyList<double> partWidths, IReadOnlyList<double> nameWidths, double overhang)
    {
        const double gap = 10;
        var n = partWidths.Count;
        var spans = new double[n];
        for (var i = 0; i < n; i++)
        {
            var left = i == 0 ? nameWidths[0] : nameWidths[i] / 2;
            var right = i == n - 1 ? Math.Max(0, nameWidths[n] - overhang) : nameWidths[i + 1] / 2;
            spans[i] = Math.Max(partWidths[i], left + gap + right);
        }

        var stretch = Math.Max(1, width / spans.Sum());
        var at = room;
        var xs = spans.Select(s => at += s * stretch).ToArray();
        return new(room, [.. xs[..^1]], xs[^1]);
    }
}
