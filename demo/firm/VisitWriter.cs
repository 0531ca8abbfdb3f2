using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Checks;
using Emberwright.Reports.FromVisit;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;
using Emberwright.Visits;
using Emberwright.Visits.Fouling;
using Emberwright.Visits.Journal;

namespace Emberwright.DemoFirm;

/// <summary>How a stove really stands between visits.</summary>
internal sealed class StoveState(Household house, DateOnly served, Chance chance)
{
    public DateOnly Served { get; private set; } = served;

    public Dictionary<Parameter, double> X { get; } = GrowthPrior.All.ToDictionary(g => g.Passage, _ => Math.Abs(chance.Normal(0, 0.05)));

    public DateOnly At { get; private set; } = served;

    public double TonnesSinceService { get; private set; }

    public void BurnUntil(DateOnly day)
    {
        var tonnes = new FuelUse(house.TonnesPerYear).TonnesBetween(At, day);
        foreach (var (passage, growth) in house.Growth) X[passage] += growth * chance.LogNormal(1, 0.3) * tonnes;
        TonnesSinceService += tonnes;
        At = day;
    }

    public void Clean(DateOnly day)
    {
        foreach (var passage in X.Keys.ToArray()) X[passage] = Math.Abs(chance.Normal(0, 0.06));
        (Served, TonnesSinceService) = (day, 0);
    }
}

/// <summary>
/// Writes one visit as a technician would: the call, readings as found from the virtual stove with its real fouling and
/// fault plus the gauge's noise, the work, readings as left, the seal over what the engine concludes.
/// </summary>
internal sealed class VisitWriter(Chance chance, Household house, StoveState state, Appointment when)
{
    private const string Device = "phone-vale-1";
    private const string Technician = "R. Sorrel";
    private static readonly string[] Cleaning = ["clean-burn-pot", "clean-ash-passages", "clean-combustion-blower", "clean-vent", "clean-room-air-blower"];

    private readonly Clock clock = new(new DateTimeOffset(when.Day.ToDateTime(new TimeOnly(7, 40)), TimeSpan.FromHours(-5)));
    private VisitJournal journal = VisitJournal.Begin(chance.Id(new DateTimeOffset(when.Day.ToDateTime(new TimeOnly(7, 40)), TimeSpan.FromHours(-5))).ToString());

    public VisitJournal Write()
    {
        var fault = when.Kind == VisitKind.Breakdown ? AnyFault() : null;
        Call(fault);
        clock.Forward(chance.Uniform(40, 160));
        Arrive();
        Readings(fault, Phase.AsFound);
        if (fault is not null) Look(fault);
        if (when.Kind != VisitKind.Inspection) Work(fault);
        Readings(null, Phase.AsLeft);
        TestFire();
        Close();
        return journal;
    }

    private Fault AnyFault() => chance.Weighted(
        [.. FaultList.On(house.Pattern.Id).Where(f => f.Fouling is null && f.SafetyStop is null && (f.Shifts.Count > 0 || f.Symptoms.Count > 1))], f => f.BaseRatePercent);

    private void Call(Fault? fault)
    {
        Add(new VisitBody(when.Kind, "Tamarack & Vale Hearth Service", Technician, new DateTimeOffset(when.Day.ToDateTime(new TimeOnly(chance.Whole(8, 15), 0)), TimeSpan.FromHours(-5)), when.Job));
        Add(new CustomerBody(house.Name, house.Address, house.Phone));
        Add(new ApplianceBody(house.Pattern.Id, Maker: house.Maker, Model: house.Model, Serial: house.Serial));
        Add(house.Site with { Outdoor = new Quantity(Math.Round(chance.Normal(when.Day.Month is >= 5 and <= 9 ? 17 : 2, 5)), Units.Celsius), Wind = new Quantity(Math.Round(Math.Abs(chance.Normal(2, 1.5))), Units.MetrePerSecond) });
        Add(new HistoryBody(AgeYears: house.AgeYears, FuelSinceService: new Quantity(Math.Round(state.TonnesSinceService, 2), Units.Tonne), LastService: state.Served, Fuel: "softwood pellets"));
        if (fault is null) return;
        var told = fault.Symptoms.Where(s => s.Sign == Complaints.Sign).ToArray();
        if (told.Length == 0) return;
        var outcome = chance.Weighted(told, s => s.Probability).Outcome;
        Add(new ComplaintBody(CatalogueWords.Outcome(Complaints.Sign, outcome), Complaints.Sign, outcome));
    }

    private void Arrive()
    {
        Add(new InstrumentBody("gauge", new DateOnly(when.Day.Year, 11, 30)));
        Add(new InstrumentBody("analyser", new DateOnly(when.Day.Year, 9, 30)));
        Add(new InstrumentBody("CO meter", new DateOnly(when.Day.Year + 1, 3, 31), true));
        foreach (var step in new[] { SafeStep.SwitchedOff, SafeStep.BurntOut, SafeStep.Cool, SafeStep.Unplugged, SafeStep.ProvedDead }) Add(new SafeBody(step), 0.6);
    }

    private void Readings(Fault? fault, Phase phase)
    {
        foreach (var port in house.Pattern.Ports.Where(p => p.Id is Places.Firebox or Places.BlowerInlet or Places.Collar))
            if (Solve(fault, Condition.FanOnly) is { } solved) Pressure(port.Id, solved.Value(Measure.Pressure, port.Id), Condition.FanOnly, phase);
        if (Solve(fault, Condition.DoorOpen) is { } open) Pressure(Places.Collar, open.Value(Measure.Pressure, Places.Collar), Condition.DoorOpen, phase);
    }

    private StoveSolution? Solve(Fault? fault, Condition condition)
    {
        var parameters = new double[Enum.GetValues<Parameter>().Length];
        foreach (var (passage, x) in state.X) parameters[(int)passage] -= x;
        foreach (var shift in fault?.Shifts ?? []) parameters[(int)shift.Parameter] += shift.Mean;
        var solved = new VirtualStove(house.Pattern, null, Site()).Solve(parameters, condition);
        return solved.Status == SolveStatus.Converged ? solved : null;
    }

    private Site Site() => Visit.Fold(journal).StoveSite();

    private void Pressure(string port, double pa, Condition condition, Phase phase)
    {
        if (!double.IsFinite(pa)) return;
        var value = new Quantity(Math.Round(pa + chance.Normal(0, 1.2)), Units.Pascal);
        Add(new ReadingBody(port, false, Measure.Pressure, condition, value, value.ToString(), "gauge", phase), 1.2);
    }

    // What the eye finds: up to three of the signs that the fault shows most plainly.
    private void Look(Fault fault)
    {
        foreach (var seen in fault.Symptoms.Where(s => s.Sign != Complaints.Sign && s.Probability >= 0.6).DistinctBy(s => s.Sign).OrderByDescending(s => s.Probability).Take(3))
            if (chance.Happens(seen.Probability)) Add(new ObservationBody(seen.Sign, seen.Outcome), 3);
    }

    private void Work(Fault? fault)
    {
        if (fault is not null)
        {
            // Now and then a good part is renewed first.
            if (chance.Happens(0.08) && !fault.Id.StartsWith("feed-", StringComparison.Ordinal)) Renew("replace-feed-motor");
            Renew(ActionList.CureOf(fault.Id));
        }

        if (when.Kind == VisitKind.Breakdown && !chance.Happens(0.75)) return;
        foreach (var id in Cleaning)
            if (ActionList.All.FirstOrDefault(a => a.Id == id && a.IsOn(house.Pattern.Id)) is { } action) Add(new ActionBody(id, AreaOf(id)), chance.LogNormal(action.Minutes, 0.2));
        state.Clean(when.Day);
    }

    private void Renew(string id)
    {
        if (ActionList.All.FirstOrDefault(a => a.Id == id) is not { } action) return;
        Add(new ActionBody(id), chance.LogNormal(Math.Max(2, action.Minutes), 0.25));
        if (action.Kind == RemedyKind.Replace)
            Add(new PartBody(action.Name.Replace("Replace the ", "", StringComparison.Ordinal), PartList.NumberOf(id), "fitted", when.Kind == VisitKind.Warranty ? $"W-{chance.Whole(100, 999)}" : null), 0.5);
    }

    private void TestFire()
    {
        clock.Forward(32);
        if (Solve(null, Condition.HighBurn) is not { } hot) return;
        Pressure(Places.Firebox, hot.Value(Measure.Pressure, Places.Firebox), Condition.HighBurn, Phase.AsLeft);
        Hot(Places.Collar, Measure.Temperature, new Quantity(Math.Round(hot.Value(Measure.Temperature, Places.Collar) + chance.Normal(0, 4)), Units.Celsius));
        if (hot.Value(Measure.Oxygen, Places.Flue) is var oxygen && double.IsFinite(oxygen)) Hot(Places.Flue, Measure.Oxygen, new Quantity(Math.Round(oxygen + chance.Normal(0, 0.3), 1), Units.Percent));
        Hot(Places.Flue, Measure.CarbonMonoxide, new Quantity(Math.Round(chance.LogNormal(190, 0.35)), Units.PartsPerMillion));
        Add(new ReadingBody(Places.Room, false, Measure.CarbonMonoxide, Condition.HighBurn, new Quantity(0, Units.PartsPerMillion), "0 ppm", "CO meter", Phase.AsLeft, new Quantity(35, Units.Minute)));
    }

    private void Hot(string place, Measure measure, Quantity value) =>
        Add(new ReadingBody(place, false, measure, Condition.HighBurn, value, value.ToString(), "analyser", Phase.AsLeft, new Quantity(35, Units.Minute)), 1);

    private void Close()
    {
        foreach (var proof in new[] { Proof.HoseOff, Proof.LidOpen, Proof.ShutdownRunOn, Proof.SmokePencil }) Add(new ProofBody(proof, ProofOutcome.Passed), 4);
        Add(new HandoverBody(["Weekly care", "Hopper lid"]));
        var findings = Findings.Of(new VisitFile(journal, []));
        var forecast = findings is null ? null : SeasonsOfAStove.Forecast([findings], null, when.Day);
        Add(new DueBody(forecast?.Due ?? when.Day.AddYears(1), DueFor.Service, forecast is null ? null : $"{PassageWords.Of(forecast.First.Growth.Prior.Passage)} first"));
        Add(new SignatureBody(Role.Customer, house.Name));
        Add(new SignatureBody(Role.Technician, Technician));
        Add(Seal.Over(journal, Emberwright.Visits.Engine.Version, SealedFigures.Of(Brief(findings?.Beliefs))));
    }

    // The demo keeps what lists, plots and learning use; bands and reasons can be computed anew and would triple its size.
    private static Beliefs? Brief(Beliefs? beliefs) => beliefs is null ? null : beliefs with
    {
        Bands = [],
        Comparisons = [],
        Notes = [],
        Alike = [],
        Suspects = [.. beliefs.Suspects.Where(s => s.AsFound >= 0.05 || s.Probability >= 0.05).Select(s => s with { Because = [.. s.Because.Take(1)] })],
    };

    private void Add(EntryBody body, double minutes = 0.3)
    {
        clock.Forward(minutes);
        journal = new EntryFactory(Device, Technician, clock, chance.Id).Append(journal, body);
    }

    private static Area? AreaOf(string action) => action switch
    {
        "clean-burn-pot" => Area.BurnPot,
        "clean-ash-passages" => Area.AshPassages,
        "clean-combustion-blower" => Area.CombustionBlower,
        "clean-vent" => Area.Vent,
        "clean-room-air-blower" => Area.RoomAirBlower,
        _ => null,
    };

    private sealed class Clock(DateTimeOffset now) : TimeProvider
    {
        private DateTimeOffset now = now;

        public void Forward(double minutes) => now = now.AddSeconds(Math.Round(minutes * 60));

        public override DateTimeOffset GetUtcNow() => now.ToUniversalTime();

        public override TimeZoneInfo LocalTimeZone { get; } = TimeZoneInfo.CreateCustomTimeZone("Orrin", now.Offset, "Orrin", "Orrin");
    }
}
