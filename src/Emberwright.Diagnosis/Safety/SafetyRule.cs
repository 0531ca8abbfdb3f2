namespace Emberwright.Diagnosis.Safety;

/// <summary>
/// A fact that forbids using the appliance until somebody entitled has released it. It is not a suspect: no probability
/// and no good reading outvotes it.
/// </summary>
/// <param name="Id">Stable id; faults refer to it.</param>
/// <param name="Urgency">How pressing it is; the most pressing is shown first.</param>
/// <param name="Words">What to do, imperative.</param>
/// <param name="Triggers">What calls for it; any one is enough.</param>
/// <param name="Releases">What ends it; without any, only a signed release outside the diagnosis does.</param>
/// <param name="ReleasedBy">Who may release it.</param>
/// <param name="Source">Where rule and threshold come from.</param>
public sealed record SafetyRule(
    string Id,
    Urgency Urgency,
    string Words,
    IReadOnlyList<Trigger> Triggers,
    IReadOnlyList<Release> Releases,
    string ReleasedBy,
    string Source);

/// <summary>How pressing a safety stop is.</summary>
public enum Urgency
{
    /// <summary>Everybody out of the house now.</summary>
    Evacuate,
    /// <summary>Stop the appliance now and ventilate.</summary>
    StopNow,
    /// <summary>Do not use the appliance until it is put right.</summary>
    DoNotUse,
}

/// <summary>What calls for a safety stop.</summary>
public abstract record Trigger
{
    /// <summary>True when this fact calls for the stop.</summary>
    /// <param name="evidence">The fact.</param>
    public abstract bool Calls(Evidence evidence);
}

/// <summary>A sign had this outcome.</summary>
/// <param name="Sign">Sign id.</param>
/// <param name="Outcome">Outcome id.</param>
public sealed record Seen(string Sign, string Outcome) : Trigger
{
    /// <inheritdoc />
    public override bool Calls(Evidence evidence) => evidence is SignEvidence sign && sign.Sign == Sign && sign.Outcome == Outcome;
}

/// <summary>A reading reached a threshold.</summary>
/// <param name="Measure">Kind of quantity.</param>
/// <param name="Places">Places it counts at.</param>
/// <param name="AtLeast">Threshold in the measure's SI unit, itself included.</param>
/// <param name="FireOnly">True when it counts only with a fire, or while one burns out.</param>
public sealed record Reaches(Stove.Measure Measure, IReadOnlyList<string> Places, double AtLeast, bool FireOnly = false) : Trigger
{
    /// <inheritdoc />
    public override bool Calls(Evidence evidence) => evidence is ReadingEvidence reading
        && reading.Observable.Measure == Measure
        && Places.Contains(reading.Observable.Place)
        && reading.Value >= AtLeast
        && (!FireOnly || reading.Observable.Condition.Fire != Stove.FireState.Cold);
}

/// <summary>What ends a safety stop.</summary>
public abstract record Release
{
    /// <summary>True when a later fact ends a stop that an earlier one called for.</summary>
    /// <param name="called">The fact that called for it.</param>
    /// <param name="later">All facts of later epochs.</param>
    public abstract bool Ends(Evidence called, IReadOnlyList<Evidence> later);
}

/// <summary>After something was done, the sign that called for the stop was had again, with its sound outcome.</summary>
/// <param name="Sign">Sign id.</param>
/// <param name="Outcome">The sound outcome.</param>
/// <param name="Answers">Further signs that it answers, which cannot be had again: a complaint, a pulse that never ends.</param>
public sealed record SeenAgain(string Sign, string Outcome, params string[] Answers) : Release
{
    /// <inheritdoc />
    public override bool Ends(Evidence called, IReadOnlyList<Evidence> later) => called is SignEvidence before
        && (before.Sign == Sign || Answers.Contains(before.Sign))
        && later.Any(e => e is SignEvidence sign && sign.Sign == Sign && sign.Outcome == Outcome);
}

/// <summary>The same quantity was read again at the same place, with a fire, below a value.</summary>
/// <param name="Below">Value in the measure's SI unit.</param>
public sealed record ReadAgain(double Below) : Release
{
    /// <inheritdoc />
    public override bool Ends(Evidence called, IReadOnlyList<Evidence> later) => called is ReadingEvidence before
        && later.Any(e => e is ReadingEvidence after
            && after.Observable.Measure == before.Observable.Measure
            && after.Observable.Place == before.Observable.Place
            && after.Observable.Condition.Fire is Stove.FireState.High or Stove.FireState.Shutdown
            && after.Value < Below);
}

/// <summary>
/// After something was done, carbon monoxide was read at nought in the room on high and again during shutdown, and not above
/// it anywhere inside; and where people were ill, that they are well. One good reading is not enough.
/// </summary>
/// <param name="Below">What counts as nought, ppm.</param>
public sealed record ProvedClear(double Below) : Release
{
    /// <inheritdoc />
    public override bool Ends(Evidence called, IReadOnlyList<Evidence> later)
    {
        var inside = later.OfType<ReadingEvidence>()
            .Where(r => r.Observable is { Measure: Stove.Measure.CarbonMonoxide, Place: Stove.Places.Room or Stove.Places.WarmAir })
            .ToList();
        bool Nought(Stove.FireState fire) => inside.Any(r => r.Observable.Place == Stove.Places.Room && r.Observable.Condition.Fire == fire);
        return inside.All(r => r.Value < Below)
            && Nought(Stove.FireState.High) && Nought(Stove.FireState.Shutdown)
            && (called is not (SignEvidence { Sign: Ill } or SignEvidence { Sign: Signs.EmergencySign.Id, Outcome: Signs.EmergencySign.Unwell })
                || later.Any(e => e is SignEvidence { Sign: Ill, Outcome: Well } or SignEvidence { Sign: Signs.EmergencySign.Id, Outcome: Signs.EmergencySign.None }));
    }

    private const string Ill = "ill";
    private const string Well = "no";
}
