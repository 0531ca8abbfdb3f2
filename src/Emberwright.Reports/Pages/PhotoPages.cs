using System.Collections.Immutable;
using Emberwright.Reports.Pictures;

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
        flow.Mark("Photos");
        flow.Put(new Strip(24, [new Text(new(0, 14), "Photos", Print.Title)], true));
        for (var i = 0; i < input.Photos.Length; i += 2)
        {
            var pair = input.Photos.Skip(i).Take(2).Select((p, c) => (c * (half + Gutter), Frame(p, half)));
            flow.PutSideBySide([.. pair]);
            flow.Space(12);
        }
    }

    private static IReadOnlyList<Strip> Frame(ReportPhoto photo, double half)
    {
        var missing = photo.File.IsDefaultOrEmpty;
        var box = new Box(0, 0, half, missing ? 30 : PhotoHeight);
        ImmutableArray<Shape> shapes = missing
            ? [new Rect(box, Print.Hairline), new Text(new(box.Centre.X, box.Centre.Y + 3), "This photo is not on this device.", Print.Fine, Anchor.Middle)]
            : [new Photo(photo.File, box, photo.Caption)];
        return [new Strip(box.Height + 4, shapes, true), .. Print.Paragraph(photo.Caption, half, Print.Fine)];
    }
}
