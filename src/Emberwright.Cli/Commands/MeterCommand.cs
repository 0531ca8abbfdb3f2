using System.ComponentModel;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using Emberwright.Visits.Journal;
using Spectre.Console;
using Spectre.Console.Cli;

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

        [CommandOption("--fault <FAULT>")]
        [Description("A fault's id, or component:state with state open, shorted, leaking-to-earth, drifted, stalled; may be given again")]
        public string[] Faults { get; init; } = [];

        [CommandOption("--function <KNOB>")]
        [Description("ac-volts, ac-volts-low-impedance, dc-volts, dc-millivolts, ac-amps, ohms, ohms-to-earth, continuity")]
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

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }
    }

    private sealed record Row(string From, string? To, MeterReading Reading);

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            var wiring = WiringLibrary.All.FirstOrDefault(w => w.Pattern == settings.Pattern)
                ?? throw Refused("PATTERN", settings.Pattern, string.Join(", ", WiringLibrary.All.Select(w => w.Pattern)));
            var operation = EnumWords.Find<Operation>(settings.State) ?? throw Refused("--state", settings.State, EnumWords.All<Operation>());
            var changes = settings.Faults.SelectMany(f => Changes(f, wiring)).ToArray();
            var rows = Read(wiring, operation, changes, settings);
            if (settings.Json) WriteJson(rows);
            else WriteText(rows);
            return rows.Exists(r => r.Reading.Refused) ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (Exception e) when (e is InputException or CircuitException)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private static List<Row> Read(Wiring wiring, Operation operation, CircuitChange[] changes, Settings settings)
    {
        var state = wiring.In(operation);
        var usual = operation == Operation.Unplugged ? MeterFunction.Ohms : MeterFunction.AcVolts;
        var function = settings.Function is { } knob
            ? EnumWords.Find<MeterFunction>(knob) ?? throw Refused("--function", knob, EnumWords.All<MeterFunction>())
            : usual;
        if (settings.From is { } from)
        {
            if (settings.To is { } to) return [new(from, to, Meter.Ordinary.Between(wiring, state, changes, function, from, to))];
            if (wiring.HasComponent(from)) return [new(from, null, Meter.Ordinary.Across(wiring, state, changes, function, from))];
            if (wiring.HasPoint(from)) return [new(from, Points.Neutral, Meter.Ordinary.Between(wiring, state, changes, function, from, Points.Neutral))];
            throw Refused("--from", from, string.Join(", ", wiring.TestPoints.Select(p => p.Id).Concat(wiring.Components.Select(c => c.Id))));
        }

        var rows = new List<Row>();
        if (function is not MeterFunction.AcAmps)
            rows.AddRange(wiring.TestPoints.Where(p => p.Id != Points.Neutral && p.Circuit == SupplyCircuit.Mains)
                .Select(p => new Row(p.Id, Points.Neutral, Meter.Ordinary.Between(wiring, state, changes, function, p.Id, Points.Neutral))));
        rows.AddRange(wiring.Components.Where(c => c is not (MainsSupply or EarthConductor))
            .Select(c => new Row(c.Id, null, Meter.Ordinary.Across(wiring, state, changes, function, c.Id))));
        return rows;
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

    private void WriteText(List<Row> rows)
    {
        foreach (var caution in rows.Select(r => r.Reading.Caution).Where(c => c is not null).Distinct())
            terminal.Console.WriteLine($"Caution: {caution}");
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(new TableColumn("from, or across"), new TableColumn("to"), new TableColumn("shows").RightAligned(), new TableColumn("note"));
        foreach (var (from, to, reading) in rows)
            table.AddRow(from, to ?? "", reading.Refused ? "refused" : Markup.Escape(Shown(reading)), Markup.Escape(reading.Note ?? ""));
        terminal.Console.Write(table);
    }

    private static string Shown(MeterReading reading)
    {
        var step = reading.Value < 10 ? 0.01 : reading.Value < 100 ? 0.1 : 1;
        return QuantityFormat.In(reading.Value, MeasureUnits.Of(reading.Measure), step);
    }

    private void WriteJson(List<Row> rows) => terminal.Out.WriteLine(JsonSerializer.Serialize(new
    {
        readings = rows.Select(r => new
        {
            r.From,
            r.To,
            quantity = MeasureUnits.Name(r.Reading.Measure),
            function = EnumWords.Of(r.Reading.Function),
            value = double.IsFinite(r.Reading.Value) ? r.Reading.Value : (double?)null,
            open = double.IsPositiveInfinity(r.Reading.Value),
            unit = new Shown(r.Reading.Measure, UnitSystem.Si).Symbol,
            tolerance = r.Reading.Tolerance,
            r.Reading.Refused,
            r.Reading.Caution,
            r.Reading.Note,
        }),
    }, JsonOf.Options));

    private static InputException Refused(string field, string value, string allowed) =>
        new(field, $"'{value}' is not known here", $"Take one of {allowed}.");
}
