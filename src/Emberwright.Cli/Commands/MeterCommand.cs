using System.ComponentModel;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Reports.FromWiring;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;
using MeterReading = Emberwright.Stove.Controls.MeterReading;

namespace Emberwright.Cli.Commands;

/// <summary>What a meter would show on a pattern's wiring, sound or with a fault.</summary>
internal sealed class MeterCommand(Terminal terminal) : Command<MeterCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<PATTERN>")]
        [Description("Pattern id, e.g. damper-insert")]
        public required string Pattern { get; init; }

        [CommandOption("--state <STATE>")]
        [Description("unplugged, off, fan-only, igniting, low, high, shutdown")]
        [DefaultValue("igniting")]
        public string State { get; init; } = "igniting";

        [CommandOption("--card <FILE>")]
        [Description("Stove card whose supply, ratings, feed order and contacts hold instead of the pattern's")]
        public string? Card { get; init; }

        [CommandOption("--fault <FAULT>")]
        [Description("A fault's id, or component:state with state open, shorted, leaking-to-earth, drifted, stalled; may be given again")]
        public string[] Faults { get; init; } = [];

        [CommandOption("--function <KNOB>")]
        [Description("ac-volts, ac-volts-low-impedance, dc-volts, dc-millivolts, ac-amps, ohms, ohms-to-earth, continuity, capacitance")]
        public string? Function { get; init; }

        [CommandOption("--from <POINT>")]
        [Description("Test point of the first lead, or a component to read across")]
        public string? From { get; init; }

        [CommandOption("--to <POINT>")]
        [Description("Test point of the second lead")]
        public string? To { get; init; }

        [CommandOption("--all")]
        [Description("Every test point to neutral and every component across")]
        public bool All { get; init; }

        [CommandOption("--svg <FILE>")]
        [Description("Draw the circuit of one load with what stands at each test point, as SVG")]
        public string? Svg { get; init; }

        [CommandOption("--load <PART>")]
        [Description("The load whose circuit --svg draws; the feed motor when not given")]
        public string? Load { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }
    }

    private sealed record Row(string From, string? To, MeterReading Reading)
    {
        public MeterReading? Sound { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            var pattern = PatternLibrary.All.FirstOrDefault(p => p.Id == settings.Pattern)
                ?? throw Refused("PATTERN", settings.Pattern, string.Join(", ", PatternLibrary.All.Select(p => p.Id)));
            var wiring = CardCircuit.Of(pattern, settings.Card is { } card ? StoveCardOf(card, pattern) : null);
            var operation = EnumWords.Find<Operation>(settings.State) ?? throw Refused("--state", settings.State, EnumWords.All<Operation>());
            var changes = settings.Faults.SelectMany(f => Changes(f, wiring)).ToArray();
            var rows = Read(wiring, operation, changes, settings);
            if (settings.Svg is { } file) Terminal.Write(file, Draw(wiring, operation, changes, settings), "--svg");
            if (settings.Json) WriteJson(wiring, rows);
            else WriteText(wiring, rows);
            return rows.Exists(r => r.Reading.Refused) ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (Exception e) when (e is InputException or CircuitException or OutputException)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private static StoveCard StoveCardOf(string file, Pattern pattern)
    {
        var card = CardFile.Read(Terminal.Read(file, "--card"), out var problems)
            ?? throw new InputException("--card", string.Join(Environment.NewLine, problems.Select(p => $"{file} {p.Path}: {p.Message}. {p.Remedy}")), "Correct the card; nothing was computed.");
        return card.Pattern == pattern.Id
            ? card
            : throw new InputException("--card", $"{file} is of pattern {card.Pattern}", $"Give {card.Pattern} as the pattern, or another card.");
    }

    private static List<Row> Read(Wiring wiring, Operation operation, CircuitChange[] changes, Settings settings)
    {
        var state = wiring.In(operation);
        MeterFunction? asked = settings.Function is { } knob
            ? EnumWords.Find<MeterFunction>(knob) ?? throw Refused("--function", knob, EnumWords.All<MeterFunction>())
            : null;
        var circuit = new ElectricalReadings(wiring, Meter.Ordinary);
        // Ohms with the plug out; else the kind of volts that the place has.
        MeterFunction At(string place) => asked ?? (operation == Operation.Unplugged ? wiring.HasComponent(place) && wiring[place] is RunCapacitor ? MeterFunction.Capacitance : MeterFunction.Ohms
            : circuit.IsMains(place) ? MeterFunction.AcVolts
            : Thermocouple(wiring, place) ? MeterFunction.DcMillivolts : MeterFunction.DcVolts);
        Row Between(string from, string to) => Both(from, At(from) == MeterFunction.OhmsToEarth ? Points.Earth : to, with => Meter.Ordinary.Between(wiring, state, with, At(from), from, to));
        Row Across(string part) => Both(part, null, with => Meter.Ordinary.Across(wiring, state, with, At(part), part));
        Row Both(string from, string? to, Func<CircuitChange[], MeterReading> read) =>
            new(from, to, read(changes)) { Sound = changes.Length == 0 ? null : read([]) };

        if (settings.From is { } from)
        {
            if (settings.To is { } to) return [Between(from, to)];
            if (wiring.HasComponent(from)) return [Across(from)];
            if (wiring.HasPoint(from)) return [Between(from, Common(circuit, from))];
            throw Refused("--from", from, string.Join(", ", wiring.TestPoints.Select(p => p.Id).Concat(wiring.Components.Select(c => c.Id))));
        }

        var rows = new List<Row>();
        if (asked is not (MeterFunction.AcAmps or MeterFunction.Capacitance))
            rows.AddRange(wiring.TestPoints.Where(p => p.Id is not (Points.Neutral or Points.BoardCommon)).Select(p => Between(p.Id, Common(circuit, p.Id))));
        rows.AddRange(wiring.Components.Where(c => asked == MeterFunction.Capacitance ? c is RunCapacitor : c is not (MainsSupply or EarthConductor)).Select(c => Across(c.Id)));
        return rows.Count > 0 ? rows : throw new InputException("--function", $"nothing on {wiring.Pattern} has a {EnumWords.Of(asked!.Value)}", "Take another function.");
    }

    private static string Common(ElectricalReadings circuit, string point) => circuit.IsMains(point) ? Points.Neutral : Points.BoardCommon;

    private static bool Thermocouple(Wiring wiring, string place) =>
        wiring.Components.OfType<Thermocouple>().Any(t => t.Id == place || t.From == place || t.To == place && place != Points.BoardCommon);

    private static byte[] Draw(Wiring wiring, Operation operation, CircuitChange[] changes, Settings settings)
    {
        var loads = LoadPath.All(wiring).ToArray();
        var wanted = settings.Load ?? (loads.Any(l => l.Load.Id == settings.From) ? settings.From! : ComponentIds.FeedMotor);
        var path = loads.FirstOrDefault(l => l.Load.Id == wanted) ?? throw Refused("--load", wanted, string.Join(", ", loads.Select(l => l.Load.Id)));
        var to = settings.To ?? path.Load.To;
        var leads = settings.From is { } from && path.Points.Contains(from) && path.Points.Contains(to) && from != to ? (from, to) : ((string, string)?)null;
        var picture = new CircuitPicture(path, operation) { Supposed = [.. changes], Leads = leads };
        return Encoding.UTF8.GetBytes(SvgWriter.Alone(WiringPicture.Draw(picture.Input())));
    }

    private static IEnumerable<CircuitChange> Changes(string words, Wiring wiring)
    {
        if (words.Split(':') is [var component, var state])
        {
            if (!wiring.HasComponent(component)) throw Refused("--fault", component, string.Join(", ", wiring.Components.Select(c => c.Id)));
            var how = EnumWords.Find<ComponentState>(state) ?? throw Refused("--fault", state, EnumWords.All<ComponentState>());
            return [new CircuitChange(component, how, how == ComponentState.Drifted ? 2 : 1)];
        }

        var fault = FaultList.On(wiring.Pattern).FirstOrDefault(f => f.Id == words)
            ?? throw new InputException("--fault", $"'{words}' is not a fault of this pattern", $"emberwright faults --pattern {wiring.Pattern} lists them; or give component:state.");
        return fault.Circuit.Where(c => wiring.HasComponent(c.Component));
    }

    private void WriteText(Wiring wiring, List<Row> rows)
    {
        foreach (var caution in rows.Select(r => r.Reading.Caution).Where(c => c is not null).Distinct())
            terminal.Console.WriteLine($"Caution: {caution}");
        var faulty = rows.Exists(r => r.Sound is not null);
        foreach (var (title, group) in new[] { ("Test points", rows.Where(r => r.To is not null)), ("Each part: volts across it, amps through it, ohms with its leads off", rows.Where(r => r.To is null)) })
        {
            if (!group.Any()) continue;
            var table = new Table { Border = TableBorder.Simple, Title = new TableTitle(title) };
            table.AddColumns(new TableColumn("no.").RightAligned(), new TableColumn("id"), new TableColumn("what"), new TableColumn("to"), new TableColumn("shows").RightAligned());
            if (faulty) table.AddColumn(new TableColumn("sound").RightAligned());
            table.AddColumn("note");
            foreach (var row in group)
            {
                List<string> cells = [Number(wiring, row.From)?.ToString(CultureInfo.InvariantCulture) ?? "", row.From, Name(wiring, row.From), row.To ?? "", Shown(row.Reading)];
                if (faulty) cells.Add(row.Sound is { } sound && Shown(sound) != Shown(row.Reading) ? Shown(sound) : "same");
                table.AddRow([.. cells.Append(row.Reading.Note ?? "").Select(Markup.Escape)]);
            }

            terminal.Console.Write(table);
        }
    }

    private static string Name(Wiring wiring, string place) =>
        wiring.HasComponent(place) ? wiring[place].Name : wiring.TestPoints[wiring.PointIndex(place)].Name;

    private static int? Number(Wiring wiring, string place) =>
        wiring.HasComponent(place) ? null : wiring.TestPoints[wiring.PointIndex(place)].Number;

    private static string Shown(MeterReading reading)
    {
        if (reading.Refused) return "refused";
        if (reading.Function == MeterFunction.DcMillivolts) return $"{QuantityFormat.Number(reading.Value * 1000, 0.1)} mV";
        if (reading.Measure == Measure.Capacitance) return QuantityFormat.Format(reading.Value, reading.Measure, UnitSystem.Si);
        var size = Math.Abs(reading.Value);
        var step = size < 10 ? 0.01 : size < 100 ? 0.1 : 1;
        return QuantityFormat.In(reading.Value, MeasureUnits.Of(reading.Measure), step);
    }

    private void WriteJson(Wiring wiring, List<Row> rows) => terminal.Out.WriteLine(JsonSerializer.Serialize(new
    {
        readings = rows.Select(r => new
        {
            r.From,
            r.To,
            point = Number(wiring, r.From),
            name = Name(wiring, r.From),
            quantity = MeasureUnits.Name(r.Reading.Measure),
            function = EnumWords.Of(r.Reading.Function),
            value = double.IsFinite(r.Reading.Value) ? r.Reading.Value : (double?)null,
            sound = r.Sound is { } sound && double.IsFinite(sound.Value) ? sound.Value : (double?)null,
            open = double.IsPositiveInfinity(r.Reading.Value),
            // Values are SI inside: farads, which nobody is shown.
            unit = r.Reading.Measure == Measure.Capacitance ? "F" : new Shown(r.Reading.Measure, UnitSystem.Si).Symbol,
            tolerance = r.Reading.Tolerance,
            r.Reading.Refused,
            r.Reading.Caution,
            r.Reading.Note,
        }),
    }, JsonOf.Options));

    private static InputException Refused(string field, string value, string allowed) =>
        new(field, $"'{value}' is not known here", $"Take one of {allowed}.");
}
