using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>Photos, two beside each other, each with what it shows. A file that is not here leaves its frame and says so.</summary>
internal static class PhotoPages
{
    private const double Gutter = 22;
    private const double PhotoHeight = 168;

    public static void Put(Flow flow, ReportInput input, PageFormat format)
    {
        if (input.Photos.IsEmpty) return;
        var half = (format.Measure - Gutter) / 2;
        flow.NewPage();
        flow.Mark(Say.Of("photos.photos"));
        flow.Put(new Strip(24, [new Text(new(0, 14), Say.Of("photos.photos"), Print.Title)], true));
        foreach (var row in Rows(input.Photos))
        {
            flow.PutSideBySide([.. row.Select((p, c) => (Column: c, Photo: p)).Where(p => p.Photo is not null).Select(p => (p.Column * (half + Gutter), Frame(p.Photo!, half)))]);
            flow.Space(12);
        }
    }

    // What was photographed before and after stands beside each other, before on the left; the rest follows two by two.
    private static IEnumerable<ReportPhoto?[]> Rows(ImmutableArray<ReportPhoto> photos)
    {
        var rest = new List<ReportPhoto>();
        foreach (var same in photos.GroupBy(p => p.Pair))
        {
            var (before, after) = (same.Where(p => !p.After).ToArray(), same.Where(p => p.After).ToArray());
            var pairs = same.Key is null ? 0 : Math.Min(before.Length, after.Length);
            for (var i = 0; i < pairs; i++) yield return [before[i], after[i]];
            rest.AddRange(same.Key is null ? same : [.. before.Skip(pairs), .. after.Skip(pairs)]);
        }

        foreach (var two in rest.Chunk(2)) yield return two;
    }

    private static IReadOnlyList<Strip> Frame(ReportPhoto photo, double half)
    {
        var missing = photo.File.IsDefaultOrEmpty;
        var box = new Box(0, 0, half, missing ? 30 : PhotoHeight);
        ImmutableArray<Shape> shapes = missing
            ? [new Rect(box, Print.Hairline), new Text(new(box.Centre.X, box.Centre.Y + 3), Say.Of("photos.this-photo-is-not-on-this-device"), Print.Fine, Anchor.Middle)]
            : [new Photo(photo.File, box, photo.Caption)];
        return [new Strip(box.Height + 4, shapes, true), .. Print.Paragraph(photo.Caption, half, Print.Fine)];
    }
}
