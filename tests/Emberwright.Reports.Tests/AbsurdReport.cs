using Emberwright.Reports.Pages;
using Emberwright.Stove;

namespace Emberwright.Reports.Tests;

/// <summary>Reports at the edges: far too much, and next to nothing.</summary>
internal static class AbsurdReport
{
    public const string LongWord = "Grandmotherinlawsummerkitchenpelletheaterinsertcombustionblowergasketcarrierplatefasteningscrewretainer";

    public static ReportInput Bare { get; } = new()
    {
        Firm = new("Tamarack & Vale Hearth Service", ""),
        Customer = "",
        Address = "",
        Heading = "Inspection report",
        At = SampleReport.At,
        Technician = "",
        Appliance = "",
        Answer = new(Use.NotDecided, "The visit is not finished."),
        EngineVersion = "0.1.0",
    };

    public static ReportInput Input { get; } = SampleReport.Cleaned with
    {
        Customer = string.Join(' ', Enumerable.Repeat("Odalys Wilhelmina", 14)) + " Brandreth",
        Address = string.Join(", ", Enumerable.Repeat("14 Quarry Lane behind the old lime kiln", 9)),
        Answer = new(Use.YesWithLimits, string.Join(' ', Enumerable.Range(1, 60).Select(i => $"limit{i}"))),
        Found = [.. Enumerable.Range(1, 12).Select(i => $"Finding {i}: " + string.Join(' ', Enumerable.Range(1, 70).Select(k => $"word{i}.{k}"))), LongWord + LongWord],
        Did = [.. Enumerable.Range(1, 25).Select(i => $"Work {i} was done with care and a brush of {i} mm.")],
        ShouldDo = [.. Enumerable.Range(1, 18).Select(i => $"Do thing {i} before lighting the stove again, every time.")],
        Readings = [.. Enumerable.Range(1, 120).Select(i => new ReadingRow($"Port {i} {(i % 9 == 0 ? LongWord : "")}", $"Condition {i / 10}", Measure.Pressure) { Found = -i, Low = -i - 2, High = -i + 2, Confidence = 0.9 - (i % 2) * 0.1, Left = -i, Explanation = i % 30 == 0 ? "Wind of the day; the margin to the switch is smaller than it should be." : null })],
        Suspects = [.. Enumerable.Range(1, 40).Select(i => new SuspectRow($"Suspect {i} {(i == 7 ? LongWord : "")}", 1.0 / (i + 1), [$"Because of {i}."]))],
        Areas = [.. Enumerable.Range(1, 14).Select(i => new Pictures.AreaChange($"Area {i} with a rather long name", new(0.01 * i, 0.02 * i, 0.03 * i), null, null))],
        Photos = [.. Enumerable.Range(1, 5).Select(i => new ReportPhoto($"Photo {i}", i == 2 ? [1, 2, 3, 4] : i == 3 ? Pixels.Png : default))],
        Limitations = [.. Enumerable.Range(1, 30).Select(i => $"Limitation {i}: the place could not be reached safely.")],
        Signatures = [.. Enumerable.Range(1, 5).Select(i => new Signed($"Signer {i} " + string.Join(' ', Enumerable.Repeat("longname", 12)), "witness", SampleReport.At, Image: i == 1 ? Pixels.Png : default))],
    };
}

/// <summary>The smallest pictures.</summary>
internal static class Pixels
{
    /// <summary>A JPEG of 8 by 6 brown pixels.</summary>
    public static System.Collections.Immutable.ImmutableArray<byte> Jpeg { get; } =
        [.. Convert.FromBase64String("/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAGAAgDASIAAhEBAxEB/8QAHwAAAQUBAQEBAQEAAAAAAAAAAAECAwQFBgcICQoL/8QAtRAAAgEDAwIEAwUFBAQAAAF9AQIDAAQRBRIhMUEGE1FhByJxFDKBkaEII0KxwRVS0fAkM2JyggkKFhcYGRolJicoKSo0NTY3ODk6Q0RFRkdISUpTVFVWV1hZWmNkZWZnaGlqc3R1dnd4eXqDhIWGh4iJipKTlJWWl5iZmqKjpKWmp6ipqrKztLW2t7i5usLDxMXGx8jJytLT1NXW19jZ2uHi4+Tl5ufo6erx8vP09fb3+Pn6/8QAHwEAAwEBAQEBAQEBAQAAAAAAAAECAwQFBgcICQoL/8QAtREAAgECBAQDBAcFBAQAAQJ3AAECAxEEBSExBhJBUQdhcRMiMoEIFEKRobHBCSMzUvAVYnLRChYkNOEl8RcYGRomJygpKjU2Nzg5OkNERUZHSElKU1RVVldYWVpjZGVmZ2hpanN0dXZ3eHl6goOEhYaHiImKkpOUlZaXmJmaoqOkpaanqKmqsrO0tba3uLm6wsPExcbHyMnK0tPU1dbX2Nna4uPk5ebn6Onq8vP09fb3+Pn6/9oADAMBAAIRAxEAPwDDooorhPQP/9k=")];

    /// <summary>A PNG of one black pixel.</summary>
    public static System.Collections.Immutable.ImmutableArray<byte> Png { get; } =
        [.. Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==")];
}
