using System.Text;

namespace Emberwright.Field.Words;

/// <summary>Turns English into the language for testing: readable, and told from English at a glance.</summary>
public static class Marks
{
    private const string Plain = "aceinouyACEINOUY";
    private const string Marked = "áçéíñóúýÁÇÉÍÑÓÚÝ";

    /// <summary>Opens each marked sentence.</summary>
    public const char Open = '⟦';

    /// <summary>The sentence with marks on its letters; what stands in braces, and the bars between words of a list, stay.</summary>
    public static string On(string sentence) => string.Join(" | ", sentence.Split(" | ").Select(One));

    private static string One(string words)
    {
        var marked = new StringBuilder().Append(Open);
        var held = false;
        foreach (var letter in words)
        {
            held = letter == '{' || held && letter != '}';
            var at = held ? -1 : Plain.IndexOf(letter, StringComparison.Ordinal);
            marked.Append(at < 0 ? letter : Marked[at]);
        }
        return marked.Append('⟧').ToString();
    }
}
