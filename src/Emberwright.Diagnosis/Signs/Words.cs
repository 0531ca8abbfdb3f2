namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// People's words reduced to what can be compared: lower case, no punctuation, endings cut (so that "blocked", "blocks" and
/// "block" are one). It is a crude stemmer for short English notes, not a grammar.
/// </summary>
internal sealed class Words
{
    private static readonly HashSet<string> Negations =
        [.. new[] { "no", "not", "never", "without", "dont", "doesnt", "isnt", "wasnt", "cannot", "cant", "nothing", "none", "neither", "nor", "nobody", "didnt", "quit", "stopped", "hardly" }.Select(Stem)];

    private static readonly HashSet<string> Particles = [.. new[] { "on", "off", "in", "out", "up", "no", "yes", "none", "nothing", "ok" }.Select(Stem)];

    private readonly string[] _tokens;

    private Words(string[] tokens) => _tokens = tokens;

    /// <summary>Number of words.</summary>
    public int Count => _tokens.Length;

    /// <summary>Reduces a text.</summary>
    public static Words Of(string text)
    {
        var letters = new string([.. text.ToLowerInvariant().Where(c => c is not ('\'' or '’')).Select(c => char.IsLetterOrDigit(c) ? c : ' ')]);
        return new Words([.. letters.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Stem)]);
    }

    /// <summary>True when these words stand somewhere in others and are fewer.</summary>
    public bool IsPartOf(Words longer) => Count < longer.Count && Enumerable.Range(0, longer.Count - Count + 1)
        .Any(i => longer._tokens.AsSpan(i, Count).SequenceEqual(_tokens));

    /// <summary>True for a single word that means something only at the start of a short answer.</summary>
    public bool IsParticle => Count == 1 && Particles.Contains(_tokens[0]);

    /// <summary>True when the first word is this phrase's only one.</summary>
    public bool Begin(Words phrase) => Count > 0 && phrase.Count == 1 && _tokens[0] == phrase._tokens[0];

    /// <summary>
    /// True when a phrase stands in these words in order, with at most one other word between two of its own, and is not
    /// negated just before.
    /// </summary>
    public bool Say(Words phrase) => Stands(phrase, negated: false);

    /// <summary>True when a phrase stands in these words only to be denied: "does not glow".</summary>
    public bool Deny(Words phrase) => !Say(phrase) && Stands(phrase, negated: true, reach: 2);

    /// <summary>These words with every place of a phrase blanked out, so that a thing's name is not taken for its state.</summary>
    public Words Without(Words phrase)
    {
        var left = _tokens.ToArray();
        for (var i = 0; i + phrase.Count <= Count; i++)
        {
            if (_tokens.AsSpan(i, phrase.Count).SequenceEqual(phrase._tokens)) left.AsSpan(i, phrase.Count).Fill("");
        }

        return new Words(left);
    }

    /// <summary>True when one word stands here, negated or not.</summary>
    public bool Has(string word) => _tokens.Contains(Stem(word));

    private bool Starts(Words phrase, int at)
    {
        var i = at;
        for (var p = 0; p < phrase.Count; p++, i++)
        {
            if (i >= Count) return false;
            if (_tokens[i] == phrase._tokens[p]) continue;
            if (p == 0 || i + 1 >= Count || Negations.Contains(_tokens[i]) || _tokens[++i] != phrase._tokens[p]) return false;
        }

        return true;
    }

    private bool Stands(Words phrase, bool negated, int reach = 4)
    {
        if (phrase.Count == 0) return false;
        for (var i = 0; i + phrase.Count <= Count; i++)
        {
            if (Starts(phrase, i) && Negated(phrase, i, reach) == negated) return true;
        }

        return false;
    }

    private bool Negated(Words phrase, int at, int reach) =>
        !Negations.Contains(phrase._tokens[0])
        && _tokens[Math.Max(0, at - (phrase.Count == 1 ? reach : 2))..at].Any(Negations.Contains);

    private static string Stem(string word)
    {
        var s = word;
        if (s.Length > 5 && s.EndsWith("ing", StringComparison.Ordinal)) s = s[..^3];
        else if (s.Length > 4 && s.EndsWith("ed", StringComparison.Ordinal)) s = s[..^2];
        else if (s.Length > 3 && s.EndsWith('s')) s = s[..^1];
        if (s.Length > 3 && s.EndsWith('e')) s = s[..^1];
        if (s.Length > 3 && s[^1] == s[^2]) s = s[..^1];
        return s;
    }
}
