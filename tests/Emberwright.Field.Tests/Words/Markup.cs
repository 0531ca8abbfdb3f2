using System.Text.RegularExpressions;

namespace Emberwright.Field.Tests.Words;

/// <summary>Reads the markup of a Razor file, as far as is needed to find words written straight into it.</summary>
internal static partial class Markup
{
    // Attributes whose value a person reads or hears.
    private static readonly string[] Read = ["aria-label", "placeholder", "alt", "title"];

    /// <summary>The words in text and spoken attributes that do not come from an expression.</summary>
    public static IEnumerable<string> WordsIn(string razor)
    {
        var code = razor.IndexOf("\n@code {", StringComparison.Ordinal);
        var markup = Directives().Replace(Remarks().Replace(code < 0 ? razor : razor[..code], ""), "");
        markup = WithoutExpressions(markup);
        foreach (Match text in Text().Matches(markup))
            if (Letters().IsMatch(text.Groups[1].Value)) yield return text.Groups[1].Value.Trim();
        foreach (Match attribute in Attribute().Matches(markup))
            if (Read.Contains(attribute.Groups[1].Value) && Letters().IsMatch(attribute.Groups[2].Value)) yield return attribute.Groups[2].Value;
    }

    // Takes out what follows each @: a name with its calls and members, something in parentheses, or the head of a statement.
    private static string WithoutExpressions(string markup)
    {
        var left = new System.Text.StringBuilder();
        for (var at = 0; at < markup.Length;)
        {
            if (markup[at] != '@')
            {
                left.Append(markup[at++]);
                continue;
            }
            at++;
            var name = Name().Match(markup, at);
            if (name.Success && name.Index == at) at += name.Length;
            // @onclick="…" and its likes are attributes, not expressions.
            if (at < markup.Length && markup[at] is '=' or ':') left.Append("attribute");
            while (at < markup.Length)
            {
                if (markup[at] is '(' or '[') at = Past(markup, at);
                else if (Member().Match(markup, at) is { Success: true } member && member.Index == at) at += member.Length;
                else if (markup[at] == ' ' && at + 1 < markup.Length && markup[at + 1] == '(' && name.Value is "if" or "foreach" or "switch" or "for") at++;
                else break;
            }
        }
        return left.ToString();
    }

    private static int Past(string text, int at)
    {
        var (open, close) = text[at] == '(' ? ('(', ')') : ('[', ']');
        for (var depth = 0; at < text.Length; at++)
        {
            if (text[at] == '"')
            {
                for (at++; text[at] != '"'; at++)
                    if (text[at] == '\\') at++;
                continue;
            }
            if (text[at] == open) depth++;
            if (text[at] == close && --depth == 0) return at + 1;
        }
        return at;
    }

    // Between a tag's end and the next tag's begin, where no statement stands between.
    [GeneratedRegex(@"(?<![=-])>([^<>{}]*)<(?=[A-Za-z/])")]
    private static partial Regex Text();

    [GeneratedRegex("([\\w-]+)=\"([^\"]*)\"")]
    private static partial Regex Attribute();

    [GeneratedRegex(@"@\*.*?\*@", RegexOptions.Singleline)]
    private static partial Regex Remarks();

    [GeneratedRegex(@"^@(page|using|inject|implements|inherits|layout)\b.*$", RegexOptions.Multiline)]
    private static partial Regex Directives();

    [GeneratedRegex("[A-Za-z]{2}")]
    private static partial Regex Letters();

    [GeneratedRegex(@"\w+")]
    private static partial Regex Name();

    [GeneratedRegex(@"[!?]?\.\w+|!(?=[.(\[])")]
    private static partial Regex Member();
}
