using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>
/// The profile in its small form, as found and as left side by side on one scale: no second axis, no key, no ledger,
/// tags with their word only. The figures stand in the table beside it.
/// </summary>
public static class PressureProfilePair
{
    private const double PlotHeight = 112;

    /// <summary>Draws both, or the one there is.</summary>
    /// <param name="found">As found; null when nothing was read before the work.</param>
    /// <param name="left">As left; null when nothing was read after it.</param>
    /// <param name="width">Width of the picture, picture units.</param>
    /// <param name="id">Prefix of ids.</param>
    /// <exception cref="ArgumentException">Both are null, or one cannot be drawn.</exception>
    public static Scene Draw(ProfileInput? found, ProfileInput? left, double width = 340, string id = "pair")
    {
        ImmutableArray<ProfileInput> both = [.. new[] { found, left }.OfType<ProfileInput>()];
        if (both.IsEmpty) throw new ArgumentException("found and left are both missing; the pair needs at least one set of readings.");
        foreach (var input in both) input.Check();
        const double gap = 20;
        var each = both.Length == 1 ? width : (width - gap) / 2;
        var y = ProfileAxes.Heights(both[0].Unit, ProfileAxes.TicksFor(both), PlotHeight);
        var panels = both.Select(input => new ProfilePanel(input, ColumnsOf(input, each), y, small: true, tagValues: false)).ToList();
        var (top, bottom) = (panels.Min(p => p.Top), panels.Max(p => p.Bottom));
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var right = width;
        foreach (var (input, i) in both.Select((input, i) => (input, i)))
        {
            var columns = ColumnsOf(input, each);
            var made = ImmutableArray.CreateBuilder<Shape>();
            made.Add(new Text(new(0, top - 12), input.Moment == Moment.Found ? Say.Of("profile.as-found-2") : Say.Of("profile.as-left-2"), Roles.Name));
            made.AddRange(panels[i].Shapes);
            foreach (var (s, port) in input.Stations.Select((s, port) => (s, port)))
                made.Add(new Text(new(columns[port], bottom + 18), ShortName(s), Roles.Word, Anchor.Middle));
            var dx = i * (Math.Max(each, ColumnsOf(both[0], each).Outdoors) + gap);
            right = Math.Max(right, dx + columns.Outdoors);
            shapes.Add(new Group(made.ToImmutable(), dx, Id: input.Moment == Moment.Found ? "found" : "left"));
        }

        var said = string.Join(" ", both.Select(b => (b.Moment == Moment.Found ? Say.Of("profile.as-found") : Say.Of("profile.as-left")) + ProfileWords.Describe(b)));
        return new Scene(id, Box.Between(-1, top - 24, right + 1, bottom + 22), Say.Of("profile.pressure-profile-small"), said, shapes.ToImmutable());
    }

    private static string ShortName(ProfileStation s) => s.ShortName ?? s.Name;

    private static Columns ColumnsOf(ProfileInput input, double width)
    {
        List<double> names = [0, .. input.Stations.Select(s => Roles.Word.Width(ShortName(s))), 0];
        return Columns.Fit(0, width, [.. input.Parts.Select(_ => 2 * Columns.Flat + 6)], names, 0);
    }
}
