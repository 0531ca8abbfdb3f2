using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>
/// The pressure profile: the way of the air from room to outdoors along x, pressure on y, the healthy band as a
/// ribbon, readings as marks, and a ledger of the changes along the way that sums to outdoors minus room.
/// Question it answers: where along the way is the slope wrong?
/// </summary>
public static class PressureProfile
{
    private const double TickHeight = 40;

    /// <summary>Draws the full form. The plot grows with its ports and its data, and never cuts either.</summary>
    /// <param name="input">What to show.</param>
    /// <param name="width">Width of the picture, picture units; at least 320. More when the words need it.</param>
    /// <exception cref="ArgumentException">The input cannot be drawn; the message names the field.</exception>
    public static Scene Draw(ProfileInput input, double width = 374)
    {
        input.Check();
        var ticks = ProfileAxes.TicksFor([input]);
        // A step or two further down often makes room for the key inside the plot.
        return Draw(input, width, ticks, inside: true)
            ?? Draw(input, width, ticks with { Low = ticks.Low - ticks.Step }, inside: true)
            ?? Draw(input, width, ticks with { Low = ticks.Low - 2 * ticks.Step }, inside: true)
            ?? Draw(input, width, ticks, inside: false)!;
    }

    private static Scene? Draw(ProfileInput input, double width, Ticks ticks, bool inside)
    {
        var height = Math.Round((ticks.High - ticks.Low) / ticks.Step) * TickHeight;
        var y = ProfileAxes.Heights(input.Unit, ticks, height);
        var axes = new ProfileAxes(input, ticks, y);
        var ledger = new LedgerRows(input);
        var left = Math.Max(38, axes.LeftWidth + 10);
        var right = axes.RightWidth + 6;
        List<double> names = [Roles.Word.Width("room"), .. input.Stations.Select(s => ColumnWidth(input, s)), Roles.Word.Width("outdoors")];
        var columns = Columns.Fit(left, Math.Max(width, 320) - 16 - left - right, ledger.Widths(left), names, right);
        var panel = new ProfilePanel(input, columns, y, wordsOnly: false);
        var bottom = Math.Max(height, panel.Bottom);
        var key = ProfileKey.Place(input, columns, panel.Room, height);
        if (inside && key is null) return null;
        var top = Math.Min(panel.Top, -26);
        var rows = ledger.Draw(columns, bottom + 18, columns.Outdoors + right);
        var low = rows.Bottom;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(axes.Draw(columns));
        shapes.AddRange(panel.Shapes);
        shapes.AddRange(key ?? ProfileKey.Below(input, columns.Outdoors + right, ref low));
        shapes.AddRange(rows.Shapes);
        var view = Box.Between(-8, top - 8, columns.Outdoors + right + 8, low + 8);
        return new Scene(input.Id, view, input.Title, ProfileWords.Describe(input), shapes.ToImmutable());
    }

    private static double ColumnWidth(ProfileInput input, ProfileStation s)
    {
        var name = Roles.Name.Width(s.Name);
        return ProfileWords.IsOut(s) ? Math.Max(name, Marks.TagSize(input.Unit.Value(s.ReadingPa!.Value), ProfileWords.Verdict(s)).Width) : name;
    }
}
