namespace Emberwright.Stove.Tests;
public class SmokeTests { [Xunit.Fact] public void Runs() => Xunit.Assert.True(true); }
