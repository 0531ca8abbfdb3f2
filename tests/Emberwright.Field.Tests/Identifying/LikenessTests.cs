using Emberwright.Field.Identifying;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Field.Tests.Identifying;

public class LikenessTests
{
    [Fact]
    public void Nothing_told_rules_nothing_out() =>
        Assert.All(Likeness.Of(new Dictionary<string, string>()), likeness => Assert.Empty(likeness.Against));

    [Fact]
    public void Every_pattern_is_found_by_its_own_answers_and_no_other_fits_all_of_them() =>
        Assert.All(PatternLibrary.All, pattern =>
        {
            var answers = LookQuestion.All.ToDictionary(q => q.Id, q => Assert.Single(q.Answers, a => a.Fits(pattern)).Id);
            var likely = Likeness.Of(answers);
            Assert.Equal(pattern.Id, likely[0].Pattern.Id);
            Assert.Empty(likely[0].Against);
            Assert.NotEmpty(likely[1].Against);
        });

    [Fact]
    public void One_wrong_answer_still_leaves_the_right_pattern_among_the_nearest()
    {
        foreach (var pattern in PatternLibrary.All)
        {
            var answers = LookQuestion.All.ToDictionary(q => q.Id, q => q.Answers.First(a => a.Fits(pattern)).Id);
            answers["heats"] = answers["heats"] == "air" ? "water" : "air";
            var likely = Likeness.Of(answers);
            Assert.Contains(likely.Where(l => l.Against.Count == likely[0].Against.Count), l => l.Pattern.Id == pattern.Id);
        }
    }
}
