using System.ComponentModel;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>What an analyser's readings say about a fire; no file needed.</summary>
internal sealed class FlueCommand(Terminal terminal) : Command<FlueCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandOption("--fuel <ID>")]
        [Description("pellets-a1 unless given; an unknown id lists all")]
        public string? Fuel { get; init; }

        [CommandOption("--o2 <PERCENT>")]
        [Description("O2 in the flue gas, e.g. 11.7")]
        public string? Oxygen { get; init; }

        [CommandOption("--co2 <PERCENT>")]
        [Description("CO2 in the flue gas, when O2 was not read")]
        public string? CarbonDioxide { get; init; }

        [CommandOption("--co <PPM>")]
        [Description("CO in the flue gas, undiluted, e.g. 190ppm")]
        public string? CarbonMonoxide { get; init; }

        [CommandOption("--wet")]
        [Description("The gas readings count water vapour")]
        public bool Wet { get; init; }

        [CommandOption("--flue <TEMPERATURE>")]
        [Description("Flue gas temperature, e.g. 163degC or 325degF")]
        public string? Flue { get; init; }

        [CommandOption("--room <TEMPERATURE>")]
        [Description("Room temperature; 20degC unless given")]
        public string? Room { get; init; }

        [CommandOption("--feed <RATE>")]
        [Description("Fuel burned, e.g. 1.7kg/h or 3.7lb/h; adds powers and flows")]
        public string? Feed { get; init; }

        [CommandOption("--pressure <PRESSURE>")]
        [Description("Absolute pressure; 1013.25hPa unless given")]
        public string? Pressure { get; init; }

        [CommandOption("--open <FIGURE>")]
        [Description("Open one figure: its inputs, equation and source")]
        public string? Open { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        try
        {
            var report = FlueReport.Compute(Options(settings));
            if (settings.Open is { } id && report.Find(id) is null)
                throw new InputException("--open", $"'{id}' is not a figure of this report", $"Take one of {string.Join(", ", report.Figures.Select(f => f.Id))}.");
            var figures = settings.Open is { } one ? report.Open(one) : report.Figures;
            if (settings.Json) WriteJson(report, figures);
            else WriteText(report, figures, settings.Open is not null);
            return report.Notes.Count > 0 ? ExitCodes.Findings : ExitCodes.Ok;
        }
        catch (InputException e)
        {
            terminal.Error.WriteLine(e.Message);
            return ExitCodes.BadInput;
        }
    }

    private static FlueOptions Options(Settings s)
    {
        var given = new FlueOptions();
        return given with
        {
            Fuel = s.Fuel is { } fuel ? Fuels.Named(fuel) : given.Fuel,
            OxygenPercent = Read(s.Oxygen, "--o2", "%", Dimension.Fraction),
            CarbonDioxidePercent = Read(s.CarbonDioxide, "--co2", "%", Dimension.Fraction),
            CarbonMonoxidePpm = Read(s.CarbonMonoxide, "--co", "ppm", Dimension.Fraction),
            Basis = s.Wet ? Basis.Wet : Basis.Dry,
            FlueC = Read(s.Flue, "--flue", "degC", Dimension.Temperature) ?? throw new InputException("--flue", "no flue gas temperature is given", "Give it with its unit, such as --flue 163degC."),
            RoomC = Read(s.Room, "--room", "degC", Dimension.Temperature) ?? given.RoomC,
            PressurePa = Read(s.Pressure, "--pressure", "Pa", Dimension.Pressure) ?? given.PressurePa,
            FuelKgPerHour = Read(s.Feed, "--feed", "kg/h", Dimension.MassFlow),
        };
    }

    // A bare number is taken in the option's usual unit.
    private static double? Read(string? text, string field, string usual, Dimension dimension)
    {
        if (text is null) return null;
        var full = char.IsAsciiDigit(text.TrimEnd()[^1]) ? $"{text} {usual}" : text;
        if (!Quantity.TryParse(full, dimension, out var quantity, out var problem))
            throw new InputException(field, $"'{text}': {problem!.Message.TrimEnd('.')}", problem.Remedy);
        return quantity.In(UnitSymbols.Find(usual, dimension)!);
    }

    private void WriteText(FlueReport report, IReadOnlyList<Figure> figures, bool opened)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns(new TableColumn("figure"), new TableColumn("value").RightAligned(), new TableColumn("±").RightAligned(), new TableColumn("unit"));
        if (opened) table.AddColumns("equation", "source");
        else table.AddColumn("id");
        foreach (var f in figures)
        {
            string[] row = [f.Name, f.Value.ToString("G5"), f.StandardUncertainty > 0 ? f.StandardUncertainty.ToString("G2") : "", f.Unit];
            table.AddRow([.. (opened ? row.Append(f.Equation).Append(f.Source) : row.Append(f.Id)).Select(Markup.Escape)]);
        }

        terminal.Console.Write(table);
        terminal.Console.WriteLine("± is the standard uncertainty from the readings' own. --open ID shows a figure's inputs, equation and source.");
        foreach (var note in report.Notes) terminal.Console.WriteLine(note);
    }

    private void WriteJson(FlueReport report, IReadOnlyList<Figure> figures) =>
        terminal.Out.WriteLine(JsonSerializer.Serialize(new { figures, notes = report.Notes }, JsonOf.Options));
}
