using System.ComponentModel;
using Emberwright.Cli.Json;
using Emberwright.Stove;
using Emberwright.Stove.Quantities;
using Emberwright.Stove.Vent;
using Emberwright.Visits;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Emberwright.Cli.Commands;

/// <summary>Whether the visit's vent run gives the stove its air: physics, the trade's rule, and distances to confirm.</summary>
internal sealed class VentCommand(Terminal terminal) : VisitCommand<VentCommand.VentSettings>(terminal)
{
    internal sealed class VentSettings : VisitSettings
    {
        [CommandOption("--wind <SPEED>")]
        [Description("Wind to withstand, e.g. 8m/s or 20mph; 8 m/s unless given, 0 leaves it out")]
        public string? Wind { get; init; }

        [CommandOption("--terminations <FILE>")]
        [Description("Distances of local code or listing (JSON, docs/schema/terminations.schema.json) in place of the usual list")]
        public string? Terminations { get; init; }

        public IReadOnlyList<TerminationDistance> Distances { get; private set; } = TerminationDistances.Usual;

        public double WindMPerS { get; private set; } = VentCheck.UsualWindMPerS;

        public override ValidationResult Validate()
        {
            if (Terminations is not null && ReadDistances() is { } wrong) return wrong;
            if (Wind is null) return base.Validate();
            var text = Wind == "0" ? "0 m/s" : Wind;
            if (!Quantity.TryParse(text, Dimension.Velocity, out var wind, out var problem))
                return ValidationResult.Error($"--wind is '{Wind}': {problem!.Message.TrimEnd('.')}. {problem.Remedy}");
            if (wind.Si is < 0 or > 40) return ValidationResult.Error($"--wind is '{Wind}'; it takes 0 to 40 m/s.");
            WindMPerS = wind.Si;
            return base.Validate();
        }

        private ValidationResult? ReadDistances()
        {
            try
            {
                if (TerminationFile.Read(global::System.IO.File.ReadAllText(Terminations!), out var problems) is not { } list)
                    return ValidationResult.Error(string.Join('\n', problems.Select(p => $"{Terminations}: {p.Path}: {p.Message.TrimEnd('.')}. {p.Remedy}")));
                Distances = list;
                return null;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return ValidationResult.Error($"--terminations is '{Terminations}': cannot be read ({e.Message.TrimEnd('.')}). Give the path of a list as docs/schema/terminations.schema.json describes.");
            }
        }
    }

    protected override bool WriteText(Findings findings, VentSettings settings)
    {
        var (check, smallest) = Check(findings, settings);
        var pressure = new Shown(Measure.Pressure, settings.System);
        var temperature = new Shown(Measure.Temperature, settings.System);
        Terminal.Console.MarkupLineInterpolated($"[bold]{findings.Title}[/]");
        Terminal.Console.WriteLine(Sentence(check.Run));
        var table = NewTable(("case", false), ("needs", true), ("has", true), ("margin", true), ("air", true), ("positive for", true), ("wet for", true), ("outlet", true), ("", false));
        foreach (var c in check.Cases)
            table.AddRow(Name(c), pressure.Text(c.RequiredPa), pressure.Text(c.AvailablePa), pressure.Text(c.MarginPa), $"{c.AirShare:P0}",
                Length(c.Profile.PositiveLengthM, settings), Length(c.Profile.CondensingLengthM, settings),
                temperature.Text(c.Profile.Points[^1].GasC), Verdict(c));
        Terminal.Console.Write(table);
        Terminal.Console.WriteLine($"Cold is a cold start, windy {settings.WindMPerS:0.#} m/s on the terminal. Air is what enters, over that on the pattern's usual vent on the reference day. Positive is the length above outdoor pressure, where every joint must be sealed; wet the length whose wall lies below the dew point. A calm case works with {100 * VentCase.LeastShare:0} % of that air or more; a windy one while the fire is not starved and the air goes the right way.");
        var rule = check.EquivalentLength;
        Terminal.Console.WriteLine($"The trade's rule: {rule.Feet:0.#} ft equivalent; {rule.Reason}{(rule.AsksForFourInch ? ", so it asks for 4 in" : "")} (common practice, no source; the appliance's listing takes precedence).");
        Limits(findings, check);
        Terminal.Console.WriteLine(smallest is { } mm
            ? $"Smallest diameter with which this run works in every case: {mm:0.#} mm ({mm / 25.4:0.#} in)."
            : "No diameter sold makes this run work in every case: shorten it, add rise, or look at house pressure and altitude setting.");
        Layers(check);
        var distances = NewTable(("keep away from", false), ("often asked", true), ("origin", false));
        foreach (var d in settings.Distances) distances.AddRow(d.From, Length(d.UsualM, settings), d.Origin.Source);
        Terminal.Console.Write(distances);
        Terminal.Console.WriteLine(TerminationDistances.Caution);
        return !check.Works;
    }

    protected override bool WriteJson(Findings findings, VentSettings settings)
    {
        var (check, smallest) = Check(findings, settings);
        var run = check.Run;
        Write(new VentDocument
        {
            Visit = findings.Visit.Id,
            Stove = JsonOf.Stove(findings),
            Engine = Engine.Version,
            Problems = JsonOf.Problems(findings),
            Run = new JsonRun(Math.Round(run.DiameterMm, 3), run.HorizontalM, run.VerticalM, run.Elbows90, run.Elbows45, run.Tees, run.Terminal, run.Lining, run.Insulated),
            Cases = [.. check.Cases.Select(Case)],
            Works = check.Works,
            SmallestDiameterMm = smallest,
            EquivalentLengthFt = Math.Round(check.EquivalentLength.Feet, 2),
            AsksForFourInch = check.EquivalentLength.AsksForFourInch,
            Rule = check.EquivalentLength.Reason,
            Terminations = [.. settings.Distances.Select(d => new JsonTermination(d.Id, d.From, Math.Round(d.UsualM, 3), d.Origin.Source))],
            Deposits = [.. Furred(check).Select(f => new JsonDeposit(
                f.Passage, Round(1000 * f.Deposit.ThicknessM), Round(f.Deposit.AreaShare), Round(1000 * f.Deposit.HydraulicDiameterM),
                Round(1000 * f.Deposit.RoughnessM), Round(f.Deposit.ConductanceShare), Round(f.Deposit.Restriction)))],
            Caution = TerminationDistances.Caution,
        });
        return !check.Works;
    }

    private static (VentCheck Check, double? SmallestMm) Check(Findings findings, VentSettings settings)
    {
        var (pattern, card, site) = (findings.Case.Pattern, findings.Case.Card, findings.Case.Site);
        return (VentCheck.Of(pattern, card, site, settings.WindMPerS), VentCheck.SmallestDiameterMm(pattern, card, site, settings.WindMPerS));
    }

    private static JsonVentCase Case(VentCase c) => new(
        ConditionText.Format(c.Condition), c.WindMPerS, Round(c.RequiredPa), Round(c.AvailablePa), Round(c.MarginPa), Round(c.AirShare),
        c.State.Status switch
        {
            SolveStatus.Converged => "converged",
            SolveStatus.FireStarved => "fire-starved",
            SolveStatus.NoSteadyFire => "no-steady-fire",
            SolveStatus.NotConverged => "not-converged",
        },
        c.Works, Round(c.Profile.PositiveLengthM), Round(c.Profile.CondensingLengthM),
        double.IsNaN(c.Profile.DewPointC) ? null : Round(c.Profile.DewPointC),
        [.. c.Profile.Points.Select(p => new JsonVentPoint(Round(p.DistanceM), Round(p.HeightM), Round(p.GasC), Round(p.WallC), Round(p.PressurePa)))]);

    private static string Name(VentCase c) =>
        (c.Condition.Fire switch { FireState.Cold => "cold", FireState.Low => "low", _ => "high" })
        + (c.WindMPerS > 0 ? ", windy" : ", calm");

    private static string Verdict(VentCase c) => c.State.Status switch
    {
        SolveStatus.FireStarved => "fire starved",
        SolveStatus.NoSteadyFire => "fire goes out",
        SolveStatus.NotConverged => "not solved",
        SolveStatus.Converged when c.AirShare <= 0 => "draught reversed",
        SolveStatus.Converged => c.Works ? "works" : "short of air",
    };

    private void Layers(VentCheck check)
    {
        var table = NewTable([("layer", false), .. Deposits.UsualM.Select(t => ($"{1000 * t:0} mm", true))]);
        foreach (var passage in Furred(check).GroupBy(f => f.Passage))
            table.AddRow([passage.Key.Replace('-', ' '), .. passage.Select(f => $"{f.Deposit.ConductanceShare:P0}")]);
        Terminal.Console.Write(table);
        Terminal.Console.WriteLine("Layer: what is left of each passage's conductance with that much ash or soot on every wall, at this vent's high burn.");
    }

    private static IReadOnlyList<FurredPassage> Furred(VentCheck check) =>
        Deposits.Of(check.Cases.First(c => c.Condition.Fire == FireState.High).State);

    private void Limits(Findings findings, VentCheck check)
    {
        if (findings.Case.Card?.VentLimits is not { } limits) return;
        if (limits.LongestEquivalentM is { } longest)
            Terminal.Console.WriteLine($"The card allows {longest:0.#} m equivalent; this run has {check.EquivalentLength.Metres:0.#} m.");
        if (limits.LongestHorizontalM is { } horizontal)
            Terminal.Console.WriteLine($"The card allows {horizontal:0.#} m horizontal; this run has {check.Run.HorizontalM:0.#} m.");
        if (limits.LeastRiseM is { } rise)
            Terminal.Console.WriteLine($"The card asks for {rise:0.#} m rise; this run has {check.Run.VerticalM:0.#} m.");
    }

    private static string Sentence(VentRun r) =>
        $"{r.DiameterMm:0.#} mm, {r.HorizontalM:0.##} m horizontal, {r.VerticalM:0.##} m rise, {r.Elbows90} × 90°, {r.Elbows45} × 45°, {r.Tees} tees, {r.Terminal}, {r.Lining}{(r.Insulated ? ", insulated" : "")}";

    private static string Length(double metres, VentSettings settings) =>
        settings.System == UnitSystem.Us ? $"{metres / 0.3048:0.#} ft" : $"{metres:0.0} m";

    private static double Round(double value) => Math.Round(value, 3);
}
