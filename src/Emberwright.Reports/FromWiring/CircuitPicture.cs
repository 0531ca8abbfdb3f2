using System.Collections.Immutable;
using Emberwright.Reports.FromVisit;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;

namespace Emberwright.Reports.FromWiring;

/// <summary>
/// Lays one load's path out as the wiring picture: what should stand at every test point in a state of the controls,
/// what was read there, and where the readings, or what is supposed, put the open.
/// </summary>
/// <param name="path">The path.</param>
/// <param name="operation">What the controls are doing.</param>
public sealed class CircuitPicture(LoadPath path, Operation operation)
{
    private readonly ElectricalReadings _circuit = new(path.Wiring, Stove.Controls.Meter.Ordinary);

    /// <summary>Components supposed at fault; expectations and the open follow from them.</summary>
    public ImmutableArray<CircuitChange> Supposed { get; init; } = [];

    /// <summary>What was read in this state: V, A or Ω by measure and place; places may be test points or components.</summary>
    public IReadOnlyDictionary<(Measure Measure, string Place), double> Readings { get; init; } =
        new Dictionary<(Measure, string), double>();

    /// <summary>False leaves the engine's own expectation out, for figures that were signed before.</summary>
    public bool Expecting { get; init; } = true;

    /// <summary>Where the leads of the meter stand, test points of the path; null draws no meter.</summary>
    public (string A, string B)? Leads { get; init; }

    // A thermocouple's millivolts would vanish among volts.
    private double Scale => path.Load is Thermocouple ? 1000 : 1;

    /// <summary>The picture's input.</summary>
    /// <param name="id">Prefix of ids, unique on the page.</param>
    public WiringInput Input(string id = "wiring")
    {
        var mains = path.Circuit == SupplyCircuit.Mains;
        var live = operation != Operation.Unplugged;
        var opens = new OpenParts(path, Expected, operation, Supposed, Readings);
        var items = ImmutableArray.CreateBuilder<WiringItem>();
        var letter = 'a';
        foreach (var part in path.Parts)
        {
            items.Add(Point(part.From, ref letter));
            items.Add(new PartSign(path.Wiring, operation, Supposed, Readings, Expecting).Of(part, opens));
        }
        items.Add(Point(path.Load.To, ref letter));
        return new WiringInput
        {
            Id = id,
            Title = Say.Of("circuit.s-circuit", ObservableName.Capital(Say.Term(path.Load.Name)), Now),
            Chain = items.ToImmutable(),
            SupplyV = Scale * path.SupplyV,
            Unit = path.Load is Thermocouple ? "mV" : "V",
            VoltsTo = path.Load is Thermocouple ? Say.Of("circuit.millivolts-red-lead-on-common") : mains ? VoltsToNeutral : Say.Of("circuit.volts-to-board-common"),
            Live = live,
            Caution = mains ? Say.Of("circuit.live-mains-on-the-double-line") : Say.Of("circuit.mains-is-live-beside-this-loop"),
            CautionDetail = mains
                ? Say.Of("circuit.one-hand-rings-off-ohms-only-with")
                : path.Load is Thermocouple ? Say.Of("circuit.millivolts-only-mains-destroys-thermocouple-and")
                : Say.Of("circuit.the-loop-itself-is-v-dc-never", QuantityFormat.Number(path.SupplyV, 1)),
            Meter = Leads is { } leads ? new LeadWords(path, operation, Supposed).Of(leads.A, leads.B) : null,
        };
    }

    /// <summary>What the controls are doing, in words.</summary>
    private string Now => operation switch
    {
        Operation.Unplugged => Say.Of("circuit.plug-out-2"),
        Operation.Off => Say.Of("circuit.plugged-in-nothing-called"),
        Operation.FanOnly => Say.Of("circuit.combustion-blower-alone"),
        Operation.Igniting => Say.Of("circuit.start-in-a-feed-pulse"),
        Operation.Low => Say.Of("circuit.lowest-setting-in-a-feed-pulse"),
        Operation.High => Say.Of("circuit.highest-setting-in-a-feed-pulse"),
        Operation.Shutdown => Say.Of("circuit.burning-out"),
    };

    private string VoltsToNeutral =>
        path.Wiring.TestPoints[path.Wiring.PointIndex(Points.Neutral)].Number is { } number ? Say.Of("circuit.volts-to-neutral-point", number) : Say.Of("circuit.volts-to-neutral");

    private double Expected(string place, bool supposed) =>
        _circuit.Predict(Measure.Voltage, place, path.Wiring.In(operation), supposed ? Supposed.AsSpan() : []);

    // A thermocouple is its own loop: what was read across it stands at its terminal.
    private double? Read(string point) => Readings.TryGetValue((Measure.Voltage, point), out var read) ? read
        : path.Load is Thermocouple && point == path.Load.From && Readings.TryGetValue((Measure.Voltage, path.Load.Id), out var across) ? across : null;

    private WiringPoint Point(string id, ref char letter)
    {
        var point = path.Wiring.TestPoints[path.Wiring.PointIndex(id)];
        var mark = id == Points.Live ? "L" : point.Number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? $"{letter++}";
        return new WiringPoint(id, mark)
        {
            ExpectV = Expecting && operation != Operation.Unplugged ? Scale * Expected(id, true) : null,
            ReadV = Read(id) is { } read ? Scale * read : null,
            Note = id switch { Points.Neutral => Say.Of("circuit.neutral"), Points.BoardCommon => Say.Of("circuit.common"), _ => null },
        };
    }
}
