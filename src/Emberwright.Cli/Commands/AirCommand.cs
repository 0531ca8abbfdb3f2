using System.ComponentModel;
using System.Text;
using System.Text.Json;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Stove.Air.Networks;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>Pressures and flows of any network of openings, cracks, passages and blowers, by the stove's own solver.</summary>
internal sealed class AirCommand(Terminal terminal) : Command<AirCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<NETWORK>")]
        [Description("The network (JSON, docs/schema/network.schema.json); - reads standard input")]
        public required string File { get; init; }

        [CommandOption("--json")]
        [Description("Write JSON, as docs/json.md describes")]
        public bool Json { get; init; }

        [CommandOption("--units <SYSTEM>")]
        [Description("us (inWC, degF) or si (Pa, degC); for the tables only")]
        [DefaultValue("si")]
        public string Units { get; init; } = "si";

        public UnitSystem System => Units.Equals("us", StringComparison.OrdinalIgnoreCase) ? UnitSystem.Us : UnitSystem.Si;

        public override ValidationResult Validate() => Units.ToLowerInvariant() is "us" or "si"
            ? ValidationResult.Success()
            : ValidationResult.Error($"--units is '{Units}'; it takes us (inWC, degF) or si (Pa, degC).");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var name = settings.File == VisitSettings.StandardInput ? "standard input" : settings.File;
        string text;
        try
        {
            text = settings.File == VisitSettings.StandardInput ? terminal.In.ReadToEnd() : File.ReadAllText(settings.File, Encoding.UTF8);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{settings.File}: cannot be read ({e.Message.TrimEnd('.')}). Give the path of a network, such as demo/networks/cold-stove.json.");
            return ExitCodes.BadInput;
        }

        var network = NetworkFile.Read(text, out var problems);
        foreach (var problem in problems)
            terminal.Error.WriteLine($"{name}: {problem.Path}: {problem.Message.TrimEnd('.')}. {problem.Remedy}");
        if (network is null) return ExitCodes.BadInput;

        var found = NetworkStates.Of(network);
        var solved = found.States[0].Solution;
        if (settings.Json) WriteJson(network, found);
        else WriteText(network, found, settings.System);
        return solved.Converged ? ExitCodes.Ok : ExitCodes.Findings;
    }

    // No minus before a figure that is nought to the digits shown.
    private static string Figure(double value, string digits) =>
        value.ToString(digits) is var text && text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text;

    private void WriteText(AirNetwork network, NetworkStates found, UnitSystem units)
    {
        if (network.Name.Length > 0) terminal.Console.MarkupLineInterpolated($"[bold]{network.Name}[/]");
        for (var i = 0; i < found.States.Count; i++)
        {
            if (found.States.Count > 1)
                terminal.Console.MarkupLineInterpolated($"[bold]State {i + 1} of {found.States.Count}[/], reached from {Starts(found.States[i])}");
            WriteState(found.States[i].Solution, units);
        }

        if (found.States.Count > 1)
            terminal.Console.WriteLine($"This network can stand in {found.States.Count} states: {string.Join(", ", found.EitherWay)} climb between places of different temperature and may carry air either way.");
        else if (!found.IsComplete)
            terminal.Console.WriteLine($"{found.EitherWay.Count} links may carry air either way; only four starts were tried, so there may be further states.");
    }

    private static string Starts(NetworkState state) => state.ReachedFrom.Count == 0
        ? "none of the starts, only with directions held"
        : string.Join(", ", state.ReachedFrom.Select(Start));

    private static string Start(NetworkStart start) => start switch
    {
        NetworkStart.Forward => "forward",
        NetworkStart.Backward => "backward",
        NetworkStart.Cold => "cold",
        NetworkStart.Hot => "hot",
    };

    private void WriteState(NetworkSolution solved, UnitSystem units)
    {
        var pressure = units == UnitSystem.Us ? Units.InchOfWater : Units.Pascal;
        var flow = units == UnitSystem.Us ? Units.CubicFootPerMinute : Units.CubicMetrePerHour;
        var digits = units == UnitSystem.Us ? "0.0000" : "0.00";
        var temperature = new Shown(Measure.Temperature, units);
        var nodes = new Table { Border = TableBorder.Simple };
        nodes.AddColumns(new TableColumn("node"), new TableColumn("pressure " + pressure.Symbol).RightAligned(), new TableColumn("temperature").RightAligned(), new TableColumn(""));
        foreach (var n in solved.Nodes)
            nodes.AddRow(Markup.Escape(n.Node.Id), Figure(pressure.FromBase(n.PressurePa), digits), temperature.Text(n.Node.TemperatureC), n.Node.PressurePa is null ? "" : "given");
        terminal.Console.Write(nodes);

        var links = new Table { Border = TableBorder.Simple };
        links.AddColumns(new TableColumn("link"), new TableColumn("from → to"), new TableColumn("g/s").RightAligned(),
            new TableColumn(flow.Symbol).RightAligned(), new TableColumn("loss " + pressure.Symbol).RightAligned(), new TableColumn("stack " + pressure.Symbol).RightAligned());
        foreach (var l in solved.Links)
            links.AddRow(Markup.Escape(l.Link.Id), Markup.Escape($"{l.Link.From} → {l.Link.To}"), (1000 * l.MassFlowKgPerS).ToString("0.0000"),
                flow.FromBase(l.VolumeFlowM3PerS).ToString("0.000"), Figure(pressure.FromBase(l.LossPa), digits), Figure(pressure.FromBase(l.StackPa), digits));
        terminal.Console.Write(links);
        terminal.Console.WriteLine($"{(solved.Converged ? "Converged" : $"Not converged, worst at {solved.Worst}")} in {solved.Iterations} steps: mass within {solved.MassResidualKgPerS:0.0E+0} kg/s, pressure within {solved.PressureResidualPa:0.0E+0} Pa.");
    }

    private void WriteJson(AirNetwork network, NetworkStates found) => terminal.Out.WriteLine(
        JsonSerializer.Serialize(AirDocument.Of(network, found, Start), JsonOf.Options));
}
