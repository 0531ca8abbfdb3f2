using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Rates;
using Emberwright.Stove;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What an own rate is about.</summary>
public enum RateOf
{
    /// <summary>A fault's share of breakdown calls, %.</summary>
    Fault,
    /// <summary>A passage's mean fouling per tonne of fuel, −ln of the share left open.</summary>
    Passage,
    /// <summary>Minutes of a check or an action.</summary>
    Work,
}

/// <summary>
/// A rate the firm's people set themselves. It goes before what was learned from visits and before the catalogue; put
/// away, it gives way to them again.
/// </summary>
/// <param name="Id">Id: <see cref="IdOf"/>.</param>
/// <param name="Pattern">Pattern id.</param>
/// <param name="Of">What it is about.</param>
/// <param name="Name">Id of the fault, the passage, the check or the action.</param>
/// <param name="Value">The value: % above 0 to 100, per tonne above 0 to 5, minutes above 0 to 600.</param>
/// <param name="Why">Why, in words.</param>
public sealed record OwnRate(string Id, string Pattern = "", RateOf Of = RateOf.Fault, string Name = "", double? Value = null, string? Why = null) : RecordBody(Id)
{
    private const string Unsaid = "set by you";

    /// <inheritdoc/>
    public override string Kind => "rate";

    /// <inheritdoc/>
    public override string Title => Name;

    /// <summary>The id of a rate: there is one of each.</summary>
    public static string IdOf(string pattern, RateOf of, string name) => $"{pattern}/{EnumWords.Of(of)}/{name}";

    /// <summary>The most a value may be.</summary>
    public static double Most(RateOf of) => of switch { RateOf.Fault => 100, RateOf.Passage => 5, RateOf.Work => 600 };

    /// <summary>The rate as diagnosis takes it.</summary>
    public PatternRates ToRates()
    {
        var rate = new Rate(Value ?? 0, Said(Why) is { } why ? $"{Unsaid}: {why}" : Unsaid);
        var none = new PatternRates(Pattern, new Dictionary<string, Rate>(), new Dictionary<Parameter, Rate>());
        return Of switch
        {
            RateOf.Fault when Catalogue.For(Pattern).Fault(Name) is not null => none with { Faults = new Dictionary<string, Rate> { [Name] = rate } },
            RateOf.Passage when EnumWords.Find<Parameter>(Name) is { } passage => none with { Fouling = new Dictionary<Parameter, Rate> { [passage] = rate } },
            RateOf.Work => none with { Minutes = new Dictionary<string, Rate> { [Name] = rate } },
            _ => none,
        };
    }

    internal static OwnRate Read(BodyReader r)
    {
        var of = r.Choice<RateOf>("of") ?? RateOf.Fault;
        var value = r.Number("value", 0, Most(of));
        if (value == 0)
        {
            r.Report<string>("value", "0", "It must lie above 0.", "Put the rate away to go by what was learned.");
            value = null;
        }

        return new(ReadId(r), r.Text("pattern") ?? "", of, r.Text("name") ?? "", value, r.Text("why"));
    }

    private protected override void WriteMembers(BodyWriter w)
    {
        w.Text("pattern", Pattern);
        w.Choice<RateOf>("of", Of);
        w.Text("name", Name);
        w.Number("value", Value);
        w.Text("why", Why);
    }
}
