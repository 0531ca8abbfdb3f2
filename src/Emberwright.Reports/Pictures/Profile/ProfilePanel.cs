using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>
/// The plot itself, in either form: ribbon, prediction, last visit, today's marks, tags, thresholds.
/// Axes, key and ledger stand around it and are no part of it.
/// </summary>
internal sealed class ProfilePanel
{
    private readonly ProfileInput _input;
    private readonly Columns _columns;
    private readonly Func<double, double> _y;
    private readonly bool _small;
    private readonly bool _tagValues;
    private readonly List<Shape> _shapes = [];

    /// <summary>Draws the plot.</summary>
    /// <param name="input">What to show.</param>
    /// <param name="columns">x of the ports.</param>
    /// <param name="y">y of a pressure in Pa.</param>
    /// <param name="small">True for the small form: no prediction, last visit or thresholds.</param>
    /// <param name="tagValues">False when tags carry only their word.</param>
    public ProfilePanel(ProfileInput input, Columns columns, Func<double, double> y, bool small, bool tagValues)
    {
        (_input, _columns, _y, _small, _tagValues) = (input, columns, y, small, tagValues);
        Room = new Placement();
        DrawPath();
        foreach (var (station, i) in Stations)
        {
            if (station.LastPa is { } last) DrawLast(i, last);
            if (station.ReadingPa is { } now) Room.Avoid(new Box(columns[i] - 9, y(now) - 9, 18, 18), 1);
        }

        foreach (var t in input.Thresholds) Room.Avoid(Tick(t), 0.5);
        foreach (var (_, i) in Stations) DrawStation(i);
        if (!small)
            foreach (var t in input.Thresholds) DrawThreshold(t);
    }

    /// <summary>What is taken, for labels placed later.</summary>
    public Placement Room { get; }

    /// <summary>Everything drawn reaches from here …</summary>
    public double Top { get; private set; } = double.PositiveInfinity;

    /// <summary>… to here.</summary>
    public double Bottom { get; private set; } = double.NegativeInfinity;

    /// <summary>The shapes from back to front.</summary>
    public ImmutableArray<Shape> Shapes => [.. _shapes];

    private IEnumerable<(ProfileStation Station, int Index)> Stations => _input.Stations.Select((s, i) => (s, i));

    private IEnumerable<Spot> Path(Func<ProfileStation, double?> pressure, double outdoors)
    {
        yield return new(_columns.Room, _y(0));
        foreach (var (station, i) in Stations)
            if (pressure(station) is { } pa)
            {
                yield return new(_columns[i] - Columns.Flat, _y(pa));
                yield return new(_columns[i] + Columns.Flat, _y(pa));
            }

        yield return new(_columns.Outdoors, _y(outdoors));
    }

    private void DrawPath()
    {
        Spot[] high = [.. Path(s => s.Healthy.HighPa, _input.Outdoors.HighPa)];
        Spot[] low = [.. Path(s => s.Healthy.LowPa, _input.Outdoors.LowPa)];
        _shapes.Add(new Line(new(_columns.Room, _y(0)), new(_columns.Outdoors, _y(0)), Roles.Axis));
        _shapes.Add(new Polygon([.. high, .. low.Reverse()], Roles.Band));
        Room.Avoid(high, 0.6);
        Room.Avoid(Path(s => s.Healthy.MidPa, _input.Outdoors.MidPa), 0.6);
        Room.Avoid(low, 0.6);
        Room.Avoid([new(_columns.Room, _y(0)), new(_columns.Outdoors, _y(0))], 0.1);
        Reach(high.Concat(low).Min(p => p.Y), high.Concat(low).Max(p => p.Y));
        if (_small || _input.Stations.All(s => s.PredictedPa is null)) return;
        Spot[] supposed = [.. Path(s => s.PredictedPa, _input.Outdoors.MidPa)];
        _shapes.Add(new Polyline([.. supposed], Roles.Supposed));
        Room.Avoid(supposed, 0.6);
        Reach(supposed.Min(p => p.Y), supposed.Max(p => p.Y));
    }

    private void DrawLast(int port, double pa)
    {
        if (_small) return;
        _shapes.Add(Marks.EarlierBar(new(_columns[port], _y(pa)), 11));
        Room.Avoid(new Box(_columns[port] - 11, _y(pa) - 3, 22, 6), 0.3);
        Reach(_y(pa) - 3, _y(pa) + 3);
    }

    private void DrawStation(int port)
    {
        var s = _input.Stations[port];
        var made = new List<Shape>();
        if (s.ReadingPa is { } pa)
        {
            var mark = new Spot(_columns[port], _y(pa));
            Reach(mark.Y - 9, mark.Y + 9);
            if (!ProfileWords.IsOut(s))
                made.Add(Marks.Dot(mark, 6, _input.Moment == Moment.Left));
            else
                DrawOut(made, s, port, mark);
        }

        var (left, right) = _columns.Around(port);
        var reach = Math.Max(24, (right - left) / 2);
        var middle = (left + right) / 2;
        var top = _y(Math.Max(0, Math.Max(s.Healthy.HighPa, s.ReadingPa ?? 0))) - 24;
        var bottom = _y(Math.Min(0, Math.Min(s.Healthy.LowPa, s.ReadingPa ?? 0))) + 24;
        made.Add(new Rect(Box.Between(middle - reach, top, middle + reach, bottom), Roles.Hit));
        var said = s.ReadingPa is { } p ? $"{s.Name} {_input.Unit.Value(p)}" : Say.Of("profile.not-read", s.Name);
        _shapes.Add(new Group([.. made], Id: s.Id, Tap: s.Id, Title: said));
    }

    private void DrawOut(List<Shape> made, ProfileStation s, int port, Spot mark)
    {
        var weak = s.ReadingPa > s.Healthy.HighPa;
        var away = weak ? -1 : 1;
        var radius = _small ? 7 : 8;
        made.Add(new Line(new(mark.X, _y(weak ? s.Healthy.HighPa : s.Healthy.LowPa)), mark, Roles.Plumb));
        made.Add(Marks.Diamond(mark, radius));
        var word = ProfileWords.Verdict(s);
        var value = !_tagValues ? null : _input.Unit.Value(s.ReadingPa!.Value);
        var (width, height) = Marks.TagSize(value, word);
        var (box, _) = Room.Best(TagPlaces(port, mark, away, width, height));
        var edge = away < 0 ? box.Bottom : box.Y;
        made.Add(new Line(new(mark.X, mark.Y + away * (radius + 1)), new(mark.X, edge), Roles.Leader));
        made.AddRange(Marks.Tag(box, value, word));
        Room.Avoid(box.Grow(2), 5);
        Room.Avoid(Box.Between(mark.X - 1, Math.Min(mark.Y, edge), mark.X + 1, Math.Max(mark.Y, edge)), 2);
        Reach(box.Y, box.Bottom);
    }

    // Away from the band, 20 px further out at each step, sideways no further than the port's own column.
    private IEnumerable<(Box, double)> TagPlaces(int port, Spot mark, int away, double width, double height)
    {
        var near = _tagValues ? 19 : 12;
        var (left, right) = _columns.Around(port);
        double[] starts = [mark.X - width / 2, Math.Max(left, mark.X - width + 8), Math.Min(right - width, mark.X - 8), mark.X - 8, mark.X - width + 8];
        for (var step = 0; step < 12; step++)
            foreach (var x in starts)
            {
                if (x > mark.X - 4 || x + width < mark.X + 4) continue;
                var distance = near + 20 * step;
                var y = away < 0 ? mark.Y - distance - height : mark.Y + distance;
                var sideways = Math.Abs(x + width / 2 - mark.X) + 2 * Math.Max(0, left - 6 - x) + 2 * Math.Max(0, x + width - right - 6);
                var outside = 20 * (Math.Max(0, _columns.Room - x) + Math.Max(0, x + width - _columns.Outdoors - 4));
                yield return (new Box(x, y, width, height), 0.6 * 20 * step + 0.3 * sideways + outside);
            }
    }

    private Box Tick(ProfileThreshold t)
    {
        var port = _input.Stations.Select(s => s.Id).ToList().IndexOf(t.StationId);
        return new Box(_columns[port] - 16, _y(t.Pa) - 1, 32, 2);
    }

    private void DrawThreshold(ProfileThreshold t)
    {
        var tick = Tick(t);
        var width = Math.Max(Roles.Word.Width(t.Name), Roles.Word.Width(t.Text(_input.Unit)));
        var (box, _) = Room.Best(LabelPlaces(tick, width));
        var from = Elbow(tick, box);
        _shapes.Add(new Polyline([new(from.X > tick.Centre.X ? tick.X : tick.Right, tick.Centre.Y), from, Foot(tick, box)], Roles.Leader));
        _shapes.Add(new Text(new(box.X, box.Y + 12), t.Name, Roles.Word));
        _shapes.Add(new Text(new(box.X, box.Y + 26), t.Text(_input.Unit), Roles.Word));
        Room.Avoid(box, 5);
        Reach(Math.Min(box.Y, tick.Y), Math.Max(box.Bottom, tick.Bottom));
    }

    private static Spot Elbow(Box tick, Box label) =>
        new(label.Centre.X >= tick.Centre.X ? tick.Right : tick.X, tick.Centre.Y);

    private static Spot Foot(Box tick, Box label) => new(
        label.Centre.X >= tick.Centre.X ? Math.Max(label.X + 4, tick.Right) : Math.Min(label.Right - 4, tick.X),
        label.Y > tick.Y ? label.Y : label.Bottom + 1);

    private IEnumerable<(Box, double)> LabelPlaces(Box tick, double width)
    {
        const double height = 31;
        for (var dy = 18.0; dy < 150; dy += 8)
            foreach (var up in (bool[])[true, false])
                for (var x = _columns.Room; x + width <= _columns.Outdoors - 2; x += 8)
                {
                    var box = new Box(x, up ? tick.Y - dy - height : tick.Bottom + dy, width, height);
                    var (from, to) = (Elbow(tick, box), Foot(tick, box));
                    var slant = Math.Abs(to.X - from.X);
                    if (slant is < 8 or > 60) continue;
                    yield return (box.Grow(3), 0.08 * dy + 0.1 * slant + Room.Crossing(from, to));
                }
    }

    private void Reach(double top, double bottom) => (Top, Bottom) = (Math.Min(Top, top), Math.Max(Bottom, bottom));
}
