using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Emberwright.Field.Tests.Running;
using Xunit;

namespace Emberwright.Field.Tests;

/// <summary>The one page behind every address knows them all, and its security policy knows its one script.</summary>
public class PageTests
{
    private static readonly string Field = Path.Combine(Repo.Root, "src", "Emberwright.Field");
    private static readonly string Page = File.ReadAllText(Path.Combine(Field, "wwwroot", "index.html"));

    [Fact]
    public void Every_address_begins_with_a_word_the_page_knows()
    {
        var known = Regex.Match(Page, "\\(index\\\\.html\\|([^)]+)\\)").Groups[1].Value.Split('|');
        var used = Directory.EnumerateFiles(Field, "*.razor", SearchOption.AllDirectories)
            .SelectMany(file => Regex.Matches(File.ReadAllText(file), "@page \"/([a-z-]+)").Select(m => m.Groups[1].Value)).ToHashSet();
        Assert.NotEmpty(used);
        Assert.Subset(known.ToHashSet(), used);
    }

    // A component that returns inside an element it has opened stops the whole screen, and only when it comes to that.
    [Fact]
    public void No_page_returns_inside_its_main_element()
    {
        foreach (var file in Directory.EnumerateFiles(Field, "*.razor", SearchOption.AllDirectories))
        {
            var markup = File.ReadAllText(file).Split("@code")[0];
            foreach (Match stop in Regex.Matches(markup, @"^\s*return;", RegexOptions.Multiline))
            {
                var before = markup[..stop.Index];
                Assert.True(Regex.Count(before, "<main") == Regex.Count(before, "</main"), $"{Path.GetFileName(file)} returns inside its main element.");
            }
        }
    }

    [Fact]
    public void The_policy_names_the_hash_of_the_inline_script()
    {
        var script = Regex.Match(Page, "<script>(.*?)</script>", RegexOptions.Singleline).Groups[1].Value;
        Assert.Contains($"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)))}'", Page, StringComparison.Ordinal);
    }
}
