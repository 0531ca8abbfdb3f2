using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Where the meaning of an alarm code comes from.</summary>
public enum CodeSource
{
    /// <summary>The card lists it.</summary>
    OnCard,
    /// <summary>The card lists codes, but not this one.</summary>
    NotOnCard,
    /// <summary>No card lists codes. Blink counts and numbers differ from make to make, so nothing is guessed.</summary>
    NoCard,
}

/// <summary>What an alarm code means on this model.</summary>
/// <param name="Shown">The code as the stove shows it.</param>
/// <param name="Source">Where the meaning comes from.</param>
/// <param name="Words">The card's words; null when it has none for this code.</param>
/// <param name="Alarm">Id of the alarm it stands for, see <see cref="Alarms"/>; null when the card does not say.</param>
public sealed record CodeMeaning(string Shown, CodeSource Source, string? Words, string? Alarm)
{
    /// <summary>The code with its meaning, or with why it has none.</summary>
    public string InWords => Source switch
    {
        CodeSource.OnCard => $"{Shown}: {Words}",
        CodeSource.NotOnCard => $"{Shown}: not on this card",
        CodeSource.NoCard => $"{Shown}: no card says what it means",
    };
}

/// <summary>
/// Looks alarm codes and blink counts up on a stove card. A code is the maker's own: the same number means different things on
/// different boards, so one that the card does not list keeps its place in the journal without a meaning.
/// </summary>
public static class CodeBook
{
    private static readonly string[] Blinks = ["blink", "blinks", "flash", "flashes", "blinking", "flashing", "times", "x"];
    private static readonly string[] Numbers = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
    private static readonly string[] Filler = ["error", "code", "alarm", "fault", "lamp", "light", "led", "red"];

    /// <summary>What a code means.</summary>
    /// <param name="shown">The code as the stove shows it, e.g. <c>E2</c> or <c>3 blinks</c>.</param>
    /// <param name="card">The stove's card, or null.</param>
    public static CodeMeaning Read(string shown, StoveCard? card)
    {
        ArgumentNullException.ThrowIfNull(shown);
        if (card is not { Codes.Count: > 0 }) return new(shown, CodeSource.NoCard, null, null);
        var plain = Plain(shown);
        return card.Codes.FirstOrDefault(c => Plain(c.Code) == plain) is { } code
            ? new(shown, CodeSource.OnCard, code.Meaning, AlarmOf(code))
            : new(shown, CodeSource.NotOnCard, null, null);
    }

    /// <summary>The card's code for an alarm of the board; null when it lists none.</summary>
    internal static CardCode? Shown(StoveCard? card, string alarm) => card?.Codes.FirstOrDefault(c => AlarmOf(c) == alarm);

    private static string? AlarmOf(CardCode code) => code.Alarm ?? (Alarms.All.Contains(code.Meaning) ? code.Meaning : null);

    // "Error E-02", "e02" and "E 02" are one code; so are "3 blinks", "flashes three times" and "3x".
    private static string Plain(string code)
    {
        var spaced = string.Concat(code.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' '));
        var words = spaced.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(w => w.Length > 1 && w[^1] == 'x' && w[..^1].All(char.IsAsciiDigit) ? new[] { w[..^1], "x" } : [w])
            .Where(w => !Filler.Contains(w)).ToArray();
        if (!words.Any(Blinks.Contains)) return string.Concat(words);
        var count = words.Where(w => !Blinks.Contains(w)).Select(w => Array.IndexOf(Numbers, w) is >= 0 and var n ? $"{n}" : w);
        return $"blinks {string.Concat(count)}";
    }
}
