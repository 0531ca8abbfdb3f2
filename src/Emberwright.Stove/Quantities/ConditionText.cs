namespace Emberwright.Stove.Quantities;

/// <summary>
/// Reads and writes a <see cref="Condition"/> as words: "cold, on, closed". Shorthands of the trade are read too:
/// fan only, blower off, door open, intake stopped, high burn, low burn, igniting, shutdown.
/// </summary>
public static class ConditionText
{
    private static readonly Dictionary<string, Condition> Shorthands = new(StringComparer.OrdinalIgnoreCase)
    {
        ["fan only"] = Condition.FanOnly,
        ["cold"] = Condition.FanOnly,
        ["blower off"] = Condition.BlowerOff,
        ["door open"] = Condition.DoorOpen,
        ["intake stopped"] = Condition.IntakeStopped,
        ["high burn"] = Condition.HighBurn,
        ["high"] = Condition.HighBurn,
        ["low burn"] = Condition.LowBurn,
        ["low"] = Condition.LowBurn,
        ["igniting"] = new(FireState.Igniting, BlowerState.On, OpeningState.Closed),
        ["shutdown"] = new(FireState.Shutdown, BlowerState.On, OpeningState.Closed),
    };

    /// <summary>What may be written, for messages.</summary>
    public const string Remedy =
        "Write fire, blower, opening, such as \"cold, on, closed\", or one of: fan only, blower off, door open, intake stopped, high burn, low burn, igniting, shutdown.";

    /// <summary>Reads a condition; words may stand in any order, and those left out are cold, on, closed.</summary>
    /// <returns>The condition, or null when a word is not known or two words contradict each other.</returns>
    public static Condition? Parse(string? text)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        if (Shorthands.TryGetValue(text.Trim(), out var whole)) return whole;
        FireState? fire = null;
        BlowerState? blower = null;
        OpeningState? opening = null;
        foreach (var word in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var known = Fire(word) is { } f && Set(ref fire, f)
                || Blower(word) is { } b && Set(ref blower, b)
                || Opening(word) is { } o && Set(ref opening, o)
                || word.Equals("fan only", StringComparison.OrdinalIgnoreCase) && Set(ref fire, FireState.Cold) && Set(ref blower, BlowerState.On);
            if (!known) return null;
        }

        return new Condition(fire ?? FireState.Cold, blower ?? BlowerState.On, opening ?? OpeningState.Closed);
    }

    /// <summary>The canonical words, e.g. "cold, on, closed".</summary>
    public static string Format(Condition condition) =>
        $"{Word(condition.Fire)}, {Word(condition.Blower)}, {Word(condition.Opening)}";

    /// <summary>A condition as a technician says it: "fan only", "high burn", "blower off, door open".</summary>
    public static string Say(Condition condition)
    {
        var fire = condition.Fire switch
        {
            FireState.Cold => condition.Blower switch { BlowerState.On => "fan only", BlowerState.Off => "blower off" },
            FireState.Igniting => "igniting",
            FireState.Low => "low burn",
            FireState.High => "high burn",
            FireState.Shutdown => "shutdown",
        };
        return condition.Opening == OpeningState.Closed ? fire : $"{fire}, {Word(condition.Opening)}";
    }

    /// <summary>The word for a state of the fire.</summary>
    public static string Word(FireState fire) => fire switch
    {
        FireState.Cold => "cold",
        FireState.Igniting => "igniting",
        FireState.Low => "low",
        FireState.High => "high",
        FireState.Shutdown => "shutdown",
    };

    /// <summary>The word for a state of the combustion blower.</summary>
    public static string Word(BlowerState blower) => blower switch
    {
        BlowerState.Off => "off",
        BlowerState.On => "on",
    };

    /// <summary>The word for what is open.</summary>
    public static string Word(OpeningState opening) => opening switch
    {
        OpeningState.Closed => "closed",
        OpeningState.DoorOpen => "door open",
        OpeningState.IntakeStopped => "intake stopped",
    };

    private static FireState? Fire(string word) => Find(Enum.GetValues<FireState>(), Word, word.EndsWith(" burn", StringComparison.OrdinalIgnoreCase) ? word[..^5] : word);

    private static BlowerState? Blower(string word) => Find(Enum.GetValues<BlowerState>(), Word, word.StartsWith("blower ", StringComparison.OrdinalIgnoreCase) ? word[7..] : word);

    private static OpeningState? Opening(string word) => Find(Enum.GetValues<OpeningState>(), Word, word);

    private static T? Find<T>(T[] all, Func<T, string> nameOf, string word) where T : struct
    {
        foreach (var one in all)
            if (nameOf(one).Equals(word, StringComparison.OrdinalIgnoreCase)) return one;
        return null;
    }

    private static bool Set<T>(ref T? slot, T value) where T : struct
    {
        if (slot is { } already && !already.Equals(value)) return false;
        slot = value;
        return true;
    }
}
