// What does a way through a practice stove cost?
// Cost = Σ steps (minutes·c + parts + second trip when the part is not on the van) + harm when a fire is lit over a fault that puts
//        exhaust or fire where people are + u when the cause is left unfound.
// Symbols: c one minute; u cost of leaving unsolved, both of the tariff.
// Validity: any order of steps.
// Assumptions: minutes, parts and trips are those the planner reckons with, so that both ways are weighed on one scale.
// Source: the tariff's; from memory, no source.
// Worked: a look of 2 minutes on a cold stove: (2 + 1)·1.25 = 3.75.
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Safety;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;

namespace Emberwright.Diagnosis.Practice;

/// <summary>One step of a practice visit with what it cost and showed.</summary>
/// <param name="Id">Id of the check or action.</param>
/// <param name="Name">In words.</param>
/// <param name="Kind">What sort of step it was.</param>
/// <param name="Minutes">Minutes.</param>
/// <param name="Time">Cost of the minutes.</param>
/// <param name="Parts">Cost of parts and material.</param>
/// <param name="Trip">Cost of coming again with a part that was not on the van.</param>
/// <param name="Harm">Cost of a fire lit where it must not be.</param>
/// <param name="Shown">What it showed; empty when it could not be had.</param>
/// <param name="Cured">Faults that went with it.</param>
public sealed record PracticeStep(
    string Id, string Name, PracticeStepKind Kind, double Minutes, double Time, double Parts, double Trip, double Harm,
    IReadOnlyList<Evidence> Shown, IReadOnlyList<Fault> Cured)
{
    /// <summary>Everything it cost.</summary>
    public double Cost => Time + Parts + Trip + Harm;

    /// <summary>True for a new part where the old one was good.</summary>
    public bool GoodPart => Kind == PracticeStepKind.Part && Cured.Count == 0;
}

/// <summary>Sorts of steps, by which costs are compared.</summary>
public enum PracticeStepKind
{
    /// <summary>Asking and looking.</summary>
    Look,
    /// <summary>Measuring and trying.</summary>
    Measure,
    /// <summary>Cleaning.</summary>
    Clean,
    /// <summary>A new part.</summary>
    Part,
    /// <summary>Adjusting, resetting, refitting.</summary>
    Adjust,
    /// <summary>Making safe.</summary>
    Safe,
}

/// <summary>
/// A visit to a stove with something hidden in it. It answers every check of the catalogue, lets repairs be tried, and keeps
/// the bill. Nothing of what is hidden shows before <see cref="Hidden"/> is asked for.
/// </summary>
public sealed class PracticeVisit
{
    private const double SafeMinutes = 10;
    private const double NoFireMinutes = 5;

    private readonly PracticeStove _begin;
    private readonly PracticeStove _stove;
    private readonly Tariff _tariff;
    private readonly List<Evidence> _evidence = [];
    private readonly List<PracticeStep> _steps = [];
    private int _prepared;

    private PracticeVisit(PracticeStove stove, Tariff tariff)
    {
        (_begin, _stove, _tariff) = (stove, stove.Copy(), tariff);
        Hidden = stove.Faults;
        Complaint = new PracticeAnswers(_stove).Complaint() ?? Complaints.LittleHeat;
        _evidence.Add(new SignEvidence("call", 0, Complaints.Sign, Complaint));
    }

    /// <summary>Begins a visit to a hidden stove.</summary>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="seed">The same seed hides the same stove.</param>
    /// <param name="level">How hard it is.</param>
    /// <param name="tariff">What minutes, parts and trips cost; null takes the default.</param>
    public static PracticeVisit Begin(Pattern pattern, int seed, PracticeLevel level, Tariff? tariff = null)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return new PracticeVisit(PracticeStove.Hide(pattern, seed, level), tariff ?? Tariff.Default);
    }

    /// <summary>What is known of the stove before the call.</summary>
    public StoveCase Case => _stove.Case;

    /// <summary>Checks, signs and actions of its pattern.</summary>
    public Catalogue Catalogue => _stove.Catalogue;

    /// <summary>What the customer complains of, as an outcome of the complaint's sign.</summary>
    public string Complaint { get; }

    /// <summary>Everything found so far, in order.</summary>
    public IReadOnlyList<Evidence> Evidence => _evidence;

    /// <summary>The steps so far.</summary>
    public IReadOnlyList<PracticeStep> Steps => _steps;

    /// <summary>True once the stove is off, burnt out, unplugged and proved dead.</summary>
    public bool MadeSafe { get; private set; }

    /// <summary>What was hidden. For the end of the exercise.</summary>
    public IReadOnlyList<Fault> Hidden { get; }

    /// <summary>What is still wrong. For the end of the exercise.</summary>
    public IReadOnlyList<Fault> Left => _stove.Faults;

    /// <summary>True when nothing is wrong any more.</summary>
    public bool Solved => Left.Count == 0;

    /// <summary>The bill so far, with the price of leaving the cause unfound while it is.</summary>
    public double Cost => _steps.Sum(s => s.Cost) + (Solved ? 0 : _tariff.Unsolved);

    /// <summary>Why a step may not be done now, or null.</summary>
    /// <param name="id">Id of a check or an action.</param>
    public string? Refusal(string id)
    {
        if (id == Planner.MakeSafe) return MadeSafe ? "It is safe already." : null;
        var check = Catalogue.Check(id);
        if (check is null && Catalogue.Action(id) is null) return $"No check and no work of this stove goes by '{id}'.";
        var opened = check is null || check.Needs.HasFlag(CheckNeeds.Unplugged) || check.Needs.HasFlag(CheckNeeds.PanelsOff);
        return opened && !MadeSafe ? "Make the stove safe first: off, burnt out, cool, unplugged, proved dead." : null;
    }

    /// <summary>Does a check, a piece of work, or makes the stove safe.</summary>
    /// <param name="id">Id of the check or action, or <see cref="Planner.MakeSafe"/>.</param>
    /// <exception cref="ArgumentException">It may not be done now; <see cref="Refusal"/> says why.</exception>
    public PracticeStep Do(string id)
    {
        if (Refusal(id) is { } why) throw new ArgumentException(why, nameof(id));
        var step = id == Planner.MakeSafe ? MakeSafe()
            : Catalogue.Check(id) is { } check ? Do(check)
            : Work(Catalogue.Action(id)!, Catalogue.Action(id)!.Name, 0, []);
        _steps.Add(step);
        return step;
    }

    /// <summary>The way the planner takes through the same stove, step by step.</summary>
    /// <returns>A visit that grows with each step; the last is the whole way.</returns>
    public IEnumerable<PracticeVisit> PlannersWay()
    {
        var way = new PracticeVisit(_begin, _tariff);
        var barred = new HashSet<string>();
        while (way._steps.Count < 60 && !way.Solved && Choose(way, barred) is { } id)
        {
            var step = way.Do(id);
            if (step.Shown.Count == 0 && step.Kind is PracticeStepKind.Look or PracticeStepKind.Measure) barred.Add(id);
            yield return way;
        }

        if (way._steps.Count == 0) yield return way;
    }

    private static string? Choose(PracticeVisit way, HashSet<string> barred)
    {
        const int several = 8;
        var progress = Diagnose.Infer(way.Case, way._evidence, way.Catalogue);
        var situation = new Situation(way._evidence, SafetyStops.Standing(way._evidence), MadeSafe: way.MadeSafe);
        var next = new Planner(way.Catalogue, way._tariff).Next(progress.Posterior!, situation, several);
        IEnumerable<RecommendedCheck> all = next.Best is { } best ? [best, .. next.Alternatives] : next.Alternatives;
        var id = all.Select(c => c.Check).FirstOrDefault(c => !barred.Contains(c) && (c == Planner.MakeSafe || way.Catalogue.Check(c) is not null || way.Catalogue.Action(c) is not null));
        return id is not null && way.Refusal(id) is not null ? Planner.MakeSafe : id;
    }

    private PracticeStep MakeSafe()
    {
        MadeSafe = true;
        return new(Planner.MakeSafe, Cautions.MakeSafe, PracticeStepKind.Safe, SafeMinutes, SafeMinutes * _tariff.PerMinute, 0, 0, 0, [], []);
    }

    private PracticeStep Do(Check check)
    {
        var answers = new PracticeAnswers(_stove);
        if (check.Needs.HasFlag(CheckNeeds.Burning) && !answers.Burns)
            return new(check.Id, check.Name, KindOf(check.Kind), NoFireMinutes, NoFireMinutes * _tariff.PerMinute, 0, 0, 0, NoFire(), []);
        var minutes = Bill.Minutes(check, _prepared);
        _prepared |= Bill.Preparations(check);
        var harm = check.Needs.HasFlag(CheckNeeds.Burning) && _stove.Faults.Any(f => f.SafetyStop is not null) ? _tariff.Harm : 0;
        var shown = new List<Evidence>();
        foreach (var sign in check.Signs) shown.Add(new SignEvidence(Next(shown), _stove.Epoch, sign, answers.See(sign)));
        foreach (var read in check.Reads)
        {
            if (answers.Read(read) is { } value) shown.Add(new ReadingEvidence(Next(shown), _stove.Epoch, read, value));
        }

        _evidence.AddRange(shown);
        return check.Action is { } action
            ? Work(Catalogue.Action(action)!, check.Name, minutes, shown)
            : new(check.Id, check.Name, KindOf(check.Kind), minutes, minutes * _tariff.PerMinute + check.Cost, 0, 0, harm, shown, []);
    }

    // That it will not burn after something was done is a test run that failed.
    private List<Evidence> NoFire()
    {
        if (_stove.Epoch == 0 || Catalogue.Sign(Rules.RunsNow) is null) return [];
        var failed = new SignEvidence(Next([]), _stove.Epoch, Rules.RunsNow, "same");
        _evidence.Add(failed);
        return [failed];
    }

    private PracticeStep Work(WorkAction action, string name, double minutes, IReadOnlyList<Evidence> shown)
    {
        var before = _stove.Faults;
        var cured = _stove.Do(action);
        _evidence.Add(new ActionEvidence(Next([]), _stove.Epoch, action.Id));
        if (minutes == 0) minutes = action.Minutes + _tariff.ProveMinutes;
        var isPart = action.Kind == RemedyKind.Replace;
        var onVan = Catalogue.Faults.FirstOrDefault(f => cured.Contains(f) || cured.Count == 0 && action.Cures.Contains(f.Id))?.Remedy.OnVan ?? 1;
        var trip = isPart && Chance.Of($"{action.Id}/{Case.Pattern.Id}/{before.Count}").Happens(1 - onVan) ? _tariff.SecondTrip : 0;
        return new(action.Id, name, KindOf(action.Kind), minutes, minutes * _tariff.PerMinute, action.PartCost, trip, 0, shown, cured);
    }

    private string Next(List<Evidence> beside) => $"p{_evidence.Count + beside.Count + 1:000}";

    private static PracticeStepKind KindOf(CheckKind kind) => kind switch
    {
        CheckKind.Ask or CheckKind.ReadStove or CheckKind.Look => PracticeStepKind.Look,
        CheckKind.Measure or CheckKind.Try => PracticeStepKind.Measure,
        CheckKind.Clean => PracticeStepKind.Clean,
        CheckKind.Reset => PracticeStepKind.Adjust,
        CheckKind.Swap => PracticeStepKind.Part,
    };

    private static PracticeStepKind KindOf(RemedyKind kind) => kind switch
    {
        RemedyKind.Clean => PracticeStepKind.Clean,
        RemedyKind.Replace => PracticeStepKind.Part,
        RemedyKind.Reset or RemedyKind.Adjust or RemedyKind.Advise => PracticeStepKind.Adjust,
    };
}
