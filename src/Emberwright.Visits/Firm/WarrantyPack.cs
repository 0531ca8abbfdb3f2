using System.Globalization;
using System.Text;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// What a maker asks for before it pays: the stove's label, what was wrong, readings before and after, parts with their
/// tags, labour, photos, and the visits themselves as proof. One ZIP file.
/// </summary>
public static class WarrantyPack
{
    /// <summary>The files of a pack. A report as PDF may be added by the caller.</summary>
    /// <param name="visits">The visits of the job, by day.</param>
    /// <param name="firm">The firm.</param>
    /// <param name="blob">Gives a photo's bytes by its reference; null when it is not here.</param>
    public static IReadOnlyList<PackedFile> Files(IReadOnlyList<Visit> visits, FirmDetails firm, Func<string, byte[]?> blob)
    {
        ArgumentNullException.ThrowIfNull(visits);
        ArgumentNullException.ThrowIfNull(firm);
        ArgumentNullException.ThrowIfNull(blob);
        var photos = visits.SelectMany(v => v.Of<PhotoBody>()).Select((photo, i) => (Photo: photo.Body, Bytes: blob(photo.Body.Photo), Name: PhotoName(photo.Body, i + 1))).ToArray();
        return
        [
            new("claim.txt", Encoding.UTF8.GetBytes(Claim(visits, firm, [.. photos.Select(p => (p.Name, p.Bytes is not null))]))),
            new("readings.csv", Encoding.UTF8.GetBytes(Readings(visits))),
            .. visits.Select(v => new PackedFile($"visits/{Archive.FileName(v.Id)}.jsonl", Encoding.UTF8.GetBytes(VisitFile.Write(v.Journal)))),
            .. photos.Where(p => p.Bytes is not null).Select(p => new PackedFile(p.Name, p.Bytes!)),
        ];
    }

    /// <summary>What such a claim usually needs and these visits lack.</summary>
    public static IReadOnlyList<string> Missing(IReadOnlyList<Visit> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var missing = new List<string>();
        if (!visits.Any(v => v.Appliance?.Serial is { Length: > 0 })) missing.Add("the stove's serial number");
        if (!visits.Any(v => v.Of<PhotoBody>().Any(p => p.Body.Caption?.Contains("label", StringComparison.OrdinalIgnoreCase) == true))) missing.Add("a photo of the label");
        if (!visits.Any(v => v.Of<PartBody>().Any())) missing.Add("the part, with its number");
        else if (visits.SelectMany(v => v.Of<PartBody>()).Any(p => p.Body.Tag is null)) missing.Add("a return or warranty tag on each part");
        if (!visits.Any(v => v.AsFound.Any())) missing.Add("readings as found");
        if (!visits.Any(v => v.AsLeft.Any())) missing.Add("readings as left");
        if (visits.Any(v => v.Seal is null)) missing.Add("sign-off of every visit");
        return missing;
    }

    private static string Claim(IReadOnlyList<Visit> visits, FirmDetails firm, IReadOnlyList<(string Name, bool Here)> photos)
    {
        var text = new StringBuilder();
        void Line(string name, string? value)
        {
            if (!string.IsNullOrEmpty(value)) text.Append(CultureInfo.InvariantCulture, $"{name,-14}{value}\n");
        }

        var stove = visits.Select(v => v.Appliance).LastOrDefault(a => a is not null);
        Line("Firm", firm.Name);
        Line("", firm.Address);
        Line("Maker", stove?.Maker);
        Line("Model", stove?.Model);
        Line("Serial", stove?.Serial);
        Line("Label", stove?.Label);
        Line("Job", visits.Select(v => v.Call?.Job).LastOrDefault(j => j is not null));
        foreach (var visit in visits)
        {
            var work = visit.Facts.Where(f => f.Body is SafeBody or ReadingBody or ObservationBody or ActionBody or PhotoBody or ProofBody).ToArray();
            text.Append('\n').Append(CultureInfo.InvariantCulture, $"Visit of {visit.Day:d MMMM yyyy} by {visit.Call?.Technician ?? (visit.Facts is [var first, ..] ? first.Entry.Author : "")}\n");
            foreach (var complaint in visit.Of<ComplaintBody>()) Line("Complaint", complaint.Body.Words);
            foreach (var code in visit.Of<CodeBody>()) Line("Code", $"{code.Body.Code} {code.Body.Meaning}".TrimEnd());
            foreach (var done in visit.Of<ActionBody>()) Line(done.Body.Done ? "Done" : "Not done", $"{done.Body.Action}{(done.Body.Outcome is { } outcome ? ": " + outcome : "")}");
            foreach (var part in visit.Of<PartBody>()) Line("Part", $"{part.Body.Part} {part.Body.Number} {part.Body.Use}{(part.Body.Tag is { } tag ? $", tag {tag}" : ", no tag")}");
            if (work.Length > 1) Line("Labour", $"{(work[^1].At - work[0].At).TotalMinutes:0} minutes on site");
            if (visit.Seal is { } seal) Line("Seal", $"{seal.Body.Hash} ({(seal.Intact ? "intact" : "not intact")})");
        }

        if (photos.Count > 0) text.Append("\nPhotos\n");
        foreach (var (name, here) in photos) text.Append(here ? "  " : "  not on this device: ").Append(name).Append('\n');
        if (Missing(visits) is { Count: > 0 } missing) text.Append("\nNot in this pack: ").Append(string.Join("; ", missing)).Append(".\n");
        return text.ToString();
    }

    private static string Readings(IReadOnlyList<Visit> visits) => CsvTable.Write(
        ["day", "phase", "place", "quantity", "condition", "value", "instrument"],
        visits.SelectMany(v => v.Readings.Select(r => (IReadOnlyList<string?>)
        [
            v.Day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), EnumWords.Of(r.Phase), r.Body.Place, MeasureUnits.Name(r.Body.Measure),
            ConditionText.Format(r.Body.Condition), r.Body.Written, r.Body.Instrument,
        ])));

    private static string PhotoName(PhotoBody photo, int number)
    {
        var words = string.Join(' ', new[] { photo.Caption, photo.Area is { } area ? EnumWords.Of(area) : null, photo.Moment is { } moment ? EnumWords.Of(moment) : null }.OfType<string>());
        var plain = string.Concat(words.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
        return $"photos/{number:00}{(plain.Length > 0 ? "-" + plain[..Math.Min(40, plain.Length)] : "")}.jpg";
    }
}
