using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>An entry as it stands after corrections. What was withdrawn is no fact.</summary>
/// <typeparam name="T">Type of what it says.</typeparam>
/// <param name="Entry">The entry first written; explanations refer to its id.</param>
/// <param name="Body">What it says now.</param>
/// <param name="Epoch">Number of actions done before it, 0 as found; an action stands in the epoch it begins.</param>
/// <param name="Corrected">True when a correction gave the body.</param>
public sealed record Fact<T>(Entry Entry, T Body, int Epoch, bool Corrected) where T : EntryBody
{
    /// <summary>Id of the entry.</summary>
    public string Id => Entry.Id;

    /// <summary>When it was first written.</summary>
    public DateTimeOffset At => Entry.At;
}

/// <summary>A reading with its phase.</summary>
/// <param name="Fact">The reading.</param>
/// <param name="Phase">As stated, or as found when no action came before it and as left otherwise.</param>
public sealed record Reading(Fact<ReadingBody> Fact, Phase Phase)
{
    /// <summary>Id of the entry.</summary>
    public string Id => Fact.Id;

    /// <summary>What was read.</summary>
    public ReadingBody Body => Fact.Body;

    /// <summary>Number of actions done before it.</summary>
    public int Epoch => Fact.Epoch;
}

/// <summary>One member of one fact on which devices disagree. The latest is used; all are shown.</summary>
/// <param name="Member">Kind and member, such as <c>site.altitude</c>.</param>
/// <param name="Claims">What each device says last, in order.</param>
public sealed record Difference(string Member, IReadOnlyList<Claim> Claims);

/// <summary>What one device says.</summary>
/// <param name="Value">The value as written.</param>
/// <param name="Entry">Id of the entry.</param>
/// <param name="Device">The device.</param>
/// <param name="Author">Who wrote it.</param>
public sealed record Claim(string Value, string Entry, string Device, string Author);
