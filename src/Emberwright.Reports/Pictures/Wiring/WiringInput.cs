using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Wiring;

/// <summary>One thing on the chain, from the supply downwards: a test point or a part.</summary>
/// <param name="Id">Its id in the pattern; what a tap on it reports.</param>
public abstract record WiringItem(string Id);

/// <summary>A place where a meter lead goes.</summary>
/// <param name="Id">Test point's id.</param>
/// <param name="Number">Short mark drawn on the wire, e.g. "4".</param>
public sealed record WiringPoint(string Id, string Number) : WiringItem(Id)
{
    /// <summary>Volts to the reference that should stand here, if what is supposed is true; null when not known.</summary>
    public double? ExpectV { get; init; }

    /// <summary>Volts read; null when not read.</summary>
    public double? ReadV { get; init; }

    /// <summary>Words instead of, or after, the volts, e.g. "neutral".</summary>
    public string? Note { get; init; }
}

/// <summary>What a part is, for its sign.</summary>
public enum PartKind
{
    /// <summary>Anything that opens and closes: disc, lid switch, vacuum switch, relay contact.</summary>
    Switch,
    /// <summary>Motor or blower.</summary>
    Motor,
    /// <summary>Igniter or another resistance.</summary>
    Heater,
    /// <summary>Fuse.</summary>
    Fuse,
    /// <summary>Plug, terminal, lead.</summary>
    Connector,
    /// <summary>Anything else; a plain box.</summary>
    Other,
}

/// <summary>Whether current can pass a part.</summary>
public enum PartState
{
    /// <summary>It can.</summary>
    Closed,
    /// <summary>It cannot.</summary>
    Open,
    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>A part between test points.</summary>
/// <param name="Id">Part's id.</param>
/// <param name="Name">Its name in the trade's words.</param>
/// <param name="Kind">What it is.</param>
public sealed record WiringPart(string Id, string Name, PartKind Kind) : WiringItem(Id)
{
    /// <summary>One short line under the name, e.g. "reset by hand · closed".</summary>
    public string? Detail { get; init; }

    /// <summary>Whether current can pass.</summary>
    public PartState State { get; init; }

    /// <summary>True when it stands open in a sound stove too, now; it is drawn open, without the tag.</summary>
    public bool AsItShould { get; init; }

    /// <summary>True when it is open and should not be.</summary>
    internal bool IsWronglyOpen => State == PartState.Open && !AsItShould;

    /// <summary>Resistance expected with the plug out, with its unit, e.g. "85–100 Ω".</summary>
    public string? ExpectOhms { get; init; }

    /// <summary>Resistance read with the plug out, with its unit.</summary>
    public string? ReadOhms { get; init; }

    /// <summary>True when the resistance read is outside what is expected.</summary>
    public bool OhmsOut { get; init; }
}

/// <summary>One reading on the meter and what it means.</summary>
/// <param name="LeadA">Id of the test point lead A is on.</param>
/// <param name="LeadB">Id of the test point lead B is on.</param>
/// <param name="Value">What the meter shows; null before the reading.</param>
/// <param name="Setting">How the knob stands, e.g. "volts AC".</param>
/// <param name="Expect">What it should show, with its unit; null when not known.</param>
/// <param name="Meaning">What any other value would mean, one or two sentences.</param>
/// <param name="EitherWay">True when the leads may be swapped.</param>
public sealed record MeterReading(string LeadA, string LeadB, string? Value, string Setting, string? Expect, string Meaning, bool EitherWay = true);

/// <summary>Everything the wiring picture shows.</summary>
public sealed record WiringInput
{
    /// <summary>Prefix of ids, unique on the page.</summary>
    public string Id { get; init; } = "wiring";

    /// <summary>What the picture is, e.g. "Feed circuit while the board calls for fuel".</summary>
    public required string Title { get; init; }

    /// <summary>Test points and parts from the supply downwards; at least one of either.</summary>
    public required ImmutableArray<WiringItem> Chain { get; init; }

    /// <summary>Full scale of the volts, V; the supply's nominal voltage, or a sense loop's.</summary>
    public required double SupplyV { get; init; }

    /// <summary>Unit of every voltage here: V, or mV for a thermocouple.</summary>
    public string Unit { get; init; } = "V";

    /// <summary>Words above the volts, e.g. "volts to neutral, point 5".</summary>
    public string VoltsTo { get; init; } = Say.Of("circuit.volts-to-neutral");

    /// <summary>True while any point is live. With the plug out the caution goes and ohms appear.</summary>
    public required bool Live { get; init; }

    /// <summary>First line of the caution.</summary>
    public string Caution { get; init; } = Say.Of("circuit.live-mains-on-the-double-line");

    /// <summary>Second line of the caution.</summary>
    public string CautionDetail { get; init; } = Say.Of("circuit.one-hand-rings-off-ohms-only-with");

    /// <summary>How far a reading may be from what is expected, V; null takes a tenth of the supply.</summary>
    public double? ToleranceV { get; init; }

    /// <summary>The reading being taken; null when none is.</summary>
    public MeterReading? Meter { get; init; }

    /// <summary>Throws unless the record can be drawn.</summary>
    /// <exception cref="ArgumentException">Names the field, its value and what it must be.</exception>
    public void Check()
    {
        if (Chain.IsDefaultOrEmpty) throw new ArgumentException("Chain is empty; a wiring picture needs at least one test point or part.");
        if (!(SupplyV is > 0 and <= 1000)) throw new ArgumentException($"SupplyV is {SupplyV} V; it must lie between 0 and 1000 V.");
        foreach (var p in Chain.OfType<WiringPoint>())
            foreach (var v in new[] { p.ExpectV, p.ReadV })
                if (v is { } volts && !(Math.Abs(volts) <= 10_000))
                    throw new ArgumentException($"The volts at test point '{p.Id}' are {volts}; leave them out when they are not known.");
        foreach (var lead in Meter is null ? [] : new[] { Meter.LeadA, Meter.LeadB })
            if (Chain.OfType<WiringPoint>().All(p => p.Id != lead))
                throw new ArgumentException($"A meter lead is on '{lead}', which is no test point of this chain.");
    }
}
