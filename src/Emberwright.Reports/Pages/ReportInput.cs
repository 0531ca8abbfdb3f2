using System.Collections.Immutable;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Profile;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Patterns.Anatomies;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.Pages;

/// <summary>
/// Everything the report prints. It holds words and figures, already decided; the pages only lay them out.
/// Figures are in each measure's own unit and are written in <see cref="Units"/>.
/// </summary>
public sealed record ReportInput
{
    /// <summary>The firm that did the work.</summary>
    public required Firm Firm { get; init; }

    /// <summary>For whom.</summary>
    public required string Customer { get; init; }

    /// <summary>Where the stove stands.</summary>
    public required string Address { get; init; }

    /// <summary>What kind of report, e.g. "Service report".</summary>
    public required string Heading { get; init; }

    /// <summary>When the visit was; the only clock the report knows.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Who did the work.</summary>
    public required string Technician { get; init; }

    /// <summary>The stove: construction, make, serial, as far as known.</summary>
    public required string Appliance { get; init; }

    /// <summary>May I use my stove?</summary>
    public required Answer Answer { get; init; }

    /// <summary>What we found, in plain words, one paragraph each.</summary>
    public ImmutableArray<string> Found { get; init; } = [];

    /// <summary>What we did.</summary>
    public ImmutableArray<string> Did { get; init; } = [];

    /// <summary>What the customer should do, numbered.</summary>
    public ImmutableArray<string> ShouldDo { get; init; } = [];

    /// <summary>What was shown and handed over.</summary>
    public ImmutableArray<string> Handed { get; init; } = [];

    /// <summary>When we come again; null when that is not settled.</summary>
    public NextDue? Next { get; init; }

    /// <summary>Who signed, or was not there to.</summary>
    public ImmutableArray<Signed> Signatures { get; init; } = [];

    /// <summary>Site and day in one or two lines: altitude, weather, vent.</summary>
    public ImmutableArray<string> Site { get; init; } = [];

    /// <summary>Pressure profile as found; null when nothing was read.</summary>
    public ProfileInput? ProfileFound { get; init; }

    /// <summary>Pressure profile as left.</summary>
    public ProfileInput? ProfileLeft { get; init; }

    /// <summary>Areas before and after.</summary>
    public ImmutableArray<AreaChange> Areas { get; init; } = [];

    /// <summary>Readings against their bands.</summary>
    public ImmutableArray<ReadingRow> Readings { get; init; } = [];

    /// <summary>What was suspected, with probability and why.</summary>
    public ImmutableArray<SuspectRow> Suspects { get; init; } = [];

    /// <summary>Sentences under the suspects: what cannot be told apart, which reading is doubtful.</summary>
    public ImmutableArray<string> SuspectNotes { get; init; } = [];

    /// <summary>Proofs that safety devices work.</summary>
    public ImmutableArray<ProofRow> Proofs { get; init; } = [];

    /// <summary>Instruments used, one line each.</summary>
    public ImmutableArray<string> Instruments { get; init; } = [];

    /// <summary>Parts fitted and time spent, one line each.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>What this visit could not cover.</summary>
    public ImmutableArray<string> Limitations { get; init; } = [];

    /// <summary>Where limits and healthy figures come from.</summary>
    public ImmutableArray<string> Sources { get; init; } = [];

    /// <summary>Circuits on which something was read; empty when nothing was.</summary>
    public ImmutableArray<WiringInput> Circuits { get; init; } = [];

    /// <summary>Flue gas and efficiency, before and after, with what each figure means.</summary>
    public ImmutableArray<FlueRow> FlueGas { get; init; } = [];

    /// <summary>What this kind of visit puts on record beside readings: identity, clearances, codes, warranty tags.</summary>
    public ImmutableArray<RecordBlock> Records { get; init; } = [];

    /// <summary>Title of what was found, in the customer's words.</summary>
    public string FoundTitle { get; init; } = Say.Of("kind.what-we-found");

    /// <summary>Title of what was done.</summary>
    public string DidTitle { get; init; } = Say.Of("kind.what-we-did");

    /// <summary>A stop-use notice that stands; it has a page of its own.</summary>
    public StopUse? Notice { get; init; }

    /// <summary>The pattern whose section the report shows; null shows none.</summary>
    public Pattern? Pattern { get; init; }

    /// <summary>What opens on this stove, in the letters of the section.</summary>
    public ImmutableArray<AccessPanel> Panels { get; init; } = [];

    /// <summary>How readings stood at the last visits; drawn only where there is something to compare with.</summary>
    public ImmutableArray<Trend> Trends { get; init; } = [];

    /// <summary>Photos, with what they show.</summary>
    public ImmutableArray<ReportPhoto> Photos { get; init; } = [];

    /// <summary>Hash that seals the journal, hexadecimal; null while the visit is open.</summary>
    public string? Seal { get; init; }

    /// <summary>Id of the visit, for the seal's code; null when there is none.</summary>
    public string? Visit { get; init; }

    /// <summary>Version of the engine whose figures these are.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>System of units figures are written in.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Language of the text, BCP 47.</summary>
    public string Language { get; init; } = Say.Language.Code;
}

/// <summary>Whose letterhead.</summary>
/// <param name="Name">Name of the firm.</param>
/// <param name="Contact">Address and telephone, one line.</param>
/// <param name="Logo">PNG or JPEG; empty when there is none.</param>
/// <param name="Colour">The firm's colour, 0xRRGGBB, for the letterhead's rule; null takes ink. Letters never take it.</param>
public sealed record Firm(string Name, string Contact, ImmutableArray<byte> Logo = default, int? Colour = null);

/// <summary>May the stove be used?</summary>
public enum Use
{
    /// <summary>Yes.</summary>
    Yes,
    /// <summary>Yes, within stated limits.</summary>
    YesWithLimits,
    /// <summary>No.</summary>
    No,
    /// <summary>Not decided: the visit is open.</summary>
    NotDecided,
}

/// <summary>The answer to the customer's first question.</summary>
/// <param name="Use">Yes, yes with limits, no.</param>
/// <param name="Reason">Why, in one or two plain sentences; with limits, the limits.</param>
public sealed record Answer(Use Use, string Reason);

/// <summary>When we come again.</summary>
/// <param name="Headline">In words, e.g. "Middle of October 2027".</param>
/// <param name="Words">What else decides, e.g. "or after about 90 bags, whichever comes first".</param>
/// <param name="From">Earliest date of an 80 % interval; null when there is none.</param>
/// <param name="Likely">Most likely date.</param>
/// <param name="To">Latest date of the interval.</param>
public sealed record NextDue(string Headline, string Words = "", DateOnly? From = null, DateOnly? Likely = null, DateOnly? To = null)
{
    /// <summary>True when we come to finish this job; false for the next ordinary service.</summary>
    public bool Return { get; init; }
}

/// <summary>A signature.</summary>
/// <param name="Name">Who.</param>
/// <param name="Role">As what, e.g. "technician".</param>
/// <param name="At">When; null when not signed.</param>
/// <param name="Absent">True when the person was not there.</param>
/// <param name="Image">The drawn signature, PNG; empty when there is none.</param>
public sealed record Signed(string Name, string Role, DateTimeOffset? At, bool Absent = false, ImmutableArray<byte> Image = default);

/// <summary>One reading, as found and as left, against its healthy band. All values in the measure's own unit.</summary>
/// <param name="Name">What and where, e.g. "Firebox".</param>
/// <param name="Condition">State of the stove, e.g. "fan only".</param>
/// <param name="Measure">Kind of quantity.</param>
public sealed record ReadingRow(string Name, string Condition, Measure Measure)
{
    /// <summary>As found.</summary>
    public double? Found { get; init; }

    /// <summary>Word for a found value out of its band; null when inside.</summary>
    public string? FoundVerdict { get; init; }

    /// <summary>Lower end of the healthy band.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of the healthy band.</summary>
    public double? High { get; init; }

    /// <summary>Share of healthy stoves inside the band, 0 to 1.</summary>
    public double? Confidence { get; init; }

    /// <summary>Where the band comes from: pattern, card, last visit.</summary>
    public string? Origin { get; init; }

    /// <summary>As left.</summary>
    public double? Left { get; init; }

    /// <summary>Word for a value left out of its band; null when inside.</summary>
    public string? LeftVerdict { get; init; }

    /// <summary>Step of the instrument; null takes an ordinary one's.</summary>
    public double? Resolution { get; init; }

    /// <summary>Why a value stays out of band; null when none does.</summary>
    public string? Explanation { get; init; }
}

/// <summary>A suspect.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Probability">That it was there as found, 0 to 1.</param>
/// <param name="Because">The strongest pieces of evidence, in words.</param>
/// <param name="Now">That it is still there, 0 to 1; null when nothing was done since.</param>
public sealed record SuspectRow(string Name, double Probability, ImmutableArray<string> Because, double? Now = null);

/// <summary>A proof that a safety device works.</summary>
/// <param name="Name">What was tried, e.g. "Sensing hose off: feed stops".</param>
/// <param name="Result">What happened, e.g. "stopped after 4 s".</param>
/// <param name="Passed">True, false, or null when it was not done.</param>
public sealed record ProofRow(string Name, string Result, bool? Passed);

/// <summary>A photo.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="File">PNG or JPEG; empty when the file is not on this device.</param>
public sealed record ReportPhoto(string Caption, ImmutableArray<byte> File = default)
{
    /// <summary>What it shows, to stand a photo from before beside one from after; null when it belongs to no pair.</summary>
    public string? Pair { get; init; }

    /// <summary>True when it was taken after the work.</summary>
    public bool After { get; init; }
}

/// <summary>One figure of the flue gas, as written, with what it means.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Found">As found; empty when not measured.</param>
/// <param name="Left">As left; empty when not measured.</param>
/// <param name="Meaning">What it means, in a sentence.</param>
public sealed record FlueRow(string Name, string Found, string Left, string Meaning);

/// <summary>A block of what is on record.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Rows">What, and what is known of it.</param>
public sealed record RecordBlock(string Title, ImmutableArray<(string Name, string Words)> Rows);

/// <summary>The written instruction not to use the stove.</summary>
/// <param name="Reason">Why.</param>
/// <param name="ReleasedBy">Who may release it.</param>
/// <param name="ReadTo">To whom it was read; empty when nobody was there.</param>
/// <param name="Signed">True when that person signed it.</param>
/// <param name="At">When it was issued.</param>
public sealed record StopUse(string Reason, string ReleasedBy, string ReadTo, bool Signed, DateTimeOffset At);

/// <summary>One quantity over the visits.</summary>
/// <param name="Name">What and where, e.g. "Firebox, fan only".</param>
/// <param name="Measure">Kind of quantity.</param>
/// <param name="Points">In order of time, values in the measure's own unit.</param>
/// <param name="Low">Lower end of today's healthy band; null when there is none.</param>
/// <param name="High">Upper end.</param>
public sealed record Trend(string Name, Measure Measure, ImmutableArray<TrendPoint> Points, double? Low, double? High);

/// <summary>One value of a trend.</summary>
/// <param name="On">The day.</param>
/// <param name="Value">In the measure's own unit.</param>
/// <param name="AsLeft">False for a value as found.</param>
public readonly record struct TrendPoint(DateOnly On, double Value, bool AsLeft);
