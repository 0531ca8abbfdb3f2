using Emberwright.Stove;

namespace Emberwright.Visits.Journal;

/// <summary>What the customer agreed to or refused, and to what amount.</summary>
/// <param name="About">What it is about: fee, estimate, a piece of work.</param>
/// <param name="Given">True for consent, false for refusal.</param>
/// <param name="Amount">Sum or limit with currency, in words.</param>
/// <param name="By">Who gave it.</param>
/// <param name="InWriting">True when it is written and signed.</param>
/// <param name="Area">Where the work would be.</param>
/// <param name="Image"><see cref="Blob"/> reference to the drawn signature under it; null for none.</param>
public sealed record ConsentBody(
    string About, bool Given, string? Amount = null, string? By = null, bool InWriting = false, Area? Area = null, string? Image = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "consent";

    internal static ConsentBody Read(BodyReader r)
    {
        var given = r.Flag("given");
        if (given is null) r.Refuse("given", "", "It is not said whether consent was given.", "Add \"given\": true or false.");
        return new(r.Required("about", "Write what it is about."), given ?? false, r.Text("amount"), r.Text("by"),
            r.Flag("inWriting") ?? false, r.Choice<Area>("area"), r.Text("blob"));
    }

    internal override EntryBody WithPersonal(Func<string, string> each) => this with { By = Each(By, each) };

    internal override void Write(BodyWriter w)
    {
        w.Text("about", About);
        w.Flag("given", Given);
        w.Text("amount", Amount);
        w.Text("by", By);
        w.Flag("inWriting", InWriting);
        w.Choice("area", Area);
        w.Text("blob", Image);
    }
}

/// <summary>Who signs.</summary>
public enum Role
{
    /// <summary>Owner or user.</summary>
    Customer,
    /// <summary>Who did the work.</summary>
    Technician,
    /// <summary>Who answers for a technician in training.</summary>
    Supervisor,
}

/// <summary>A signature, or the statement that the person was not there.</summary>
/// <param name="Role">Who signs.</param>
/// <param name="Name">The name or a <see cref="Blob"/> reference to it.</param>
/// <param name="Image">Blob reference to the drawn signature.</param>
/// <param name="Absent">True when the person was not there to sign.</param>
public sealed record SignatureBody(Role Role, string? Name = null, string? Image = null, bool Absent = false) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "signature";

    internal static SignatureBody Read(BodyReader r) =>
        new(r.RequiredChoice<Role>("role"), r.Text("name"), r.Text("blob"), r.Flag("absent") ?? false);

    // Whoever works for the firm answers for what they sign.
    internal override EntryBody WithPersonal(Func<string, string> each) => Role == Role.Customer ? this with { Name = Each(Name, each) } : this;

    internal override void Write(BodyWriter w)
    {
        w.Choice<Role>("role", Role);
        w.Text("name", Name);
        w.Text("blob", Image);
        w.Flag("absent", Absent ? true : null);
    }
}

/// <summary>What the next date is for.</summary>
public enum DueFor
{
    /// <summary>Next service.</summary>
    Service,
    /// <summary>Coming back to finish this job.</summary>
    Return,
    /// <summary>A call to ask how it runs.</summary>
    FollowUp,
}

/// <summary>When to come back.</summary>
/// <param name="On">The date.</param>
/// <param name="For">What for.</param>
/// <param name="Basis">Why then.</param>
public sealed record DueBody(DateOnly On, DueFor For = DueFor.Service, string? Basis = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "due";

    internal static DueBody Read(BodyReader r)
    {
        var on = r.Date("on");
        if (on is null) r.Refuse("on", r.Text("on") ?? "", "The date is missing.", "Write year-month-day, such as 2027-01-14.");
        return new(on ?? default, r.Choice<DueFor>("for") ?? DueFor.Service, r.Text("basis"));
    }

    internal override void Write(BodyWriter w)
    {
        w.Date("on", On);
        w.Choice<DueFor>("for", For);
        w.Text("basis", Basis);
    }
}

/// <summary>What was shown and handed to the customer.</summary>
/// <param name="Shown">What was shown, e.g. weekly care.</param>
/// <param name="FuelLot">Lot of the fuel.</param>
/// <param name="CoAlarmUntil">Until when the CO alarm is good.</param>
public sealed record HandoverBody(IReadOnlyList<string> Shown, string? FuelLot = null, DateOnly? CoAlarmUntil = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "handover";

    internal static HandoverBody Read(BodyReader r) => new(r.Texts("shown"), r.Text("fuelLot"), r.Date("coAlarmUntil"));

    internal override void Write(BodyWriter w)
    {
        w.Texts("shown", Shown);
        w.Text("fuelLot", FuelLot);
        w.Date("coAlarmUntil", CoAlarmUntil);
    }
}

/// <summary>An instrument brought to the visit.</summary>
/// <param name="Name">The name readings use.</param>
/// <param name="CalibratedUntil">Until when its calibration holds.</param>
/// <param name="ZeroedOutdoors">True when it was zeroed outdoors today, as a CO meter must be.</param>
public sealed record InstrumentBody(string Name, DateOnly? CalibratedUntil = null, bool ZeroedOutdoors = false) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "instrument";

    internal static InstrumentBody Read(BodyReader r) =>
        new(r.Required("name", "Write the name that the readings use."), r.Date("calibratedUntil"), r.Flag("zeroedOutdoors") ?? false);

    internal override void Write(BodyWriter w)
    {
        w.Text("name", Name);
        w.Date("calibratedUntil", CalibratedUntil);
        w.Flag("zeroedOutdoors", ZeroedOutdoors ? true : null);
    }
}
