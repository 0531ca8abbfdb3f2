using Emberwright.Stove.Controls.Sensors;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// NIST ITS-90 thermocouple database, type K. Table values are rounded to 1 µV, which is the tolerance. The database's own
/// approximate inverse polynomials (0 to 500 °C, 500 to 1372 °C) claim errors within 0.06 K; they are an independent way back.
/// </summary>
public class Its90TypeK
{
    private static readonly double[] Lower =
        [0, 2.508355e1, 7.860106e-2, -2.503131e-1, 8.315270e-2, -1.228034e-2, 9.804036e-4, -4.413030e-5, 1.057734e-6, -1.052755e-8];

    private static readonly double[] Upper = [-1.318058e2, 4.830222e1, -1.646031, 5.464731e-2, -9.650715e-4, 8.802193e-6, -3.110810e-8];

    [Theory]
    [InlineData(-200, -5.891)]
    [InlineData(-100, -3.554)]
    [InlineData(0, 0)]
    [InlineData(25, 1.000)]
    [InlineData(100, 4.096)]
    [InlineData(500, 20.644)]
    [InlineData(1000, 41.276)]
    [InlineData(1372, 54.886)]
    public void Voltage_of_the_table(double celsius, double millivolts) =>
        Assert.Equal(millivolts, TypeK.Millivolts(celsius), 0.0006);

    [Fact]
    public void Way_back_agrees_with_the_published_inverse()
    {
        for (var mv = 0.5; mv < 54.8; mv += 0.37)
            Assert.Equal(Polynomial(mv < 20.644 ? Lower : Upper, mv), TypeK.Celsius(mv), 0.06);
    }

    private static double Polynomial(double[] c, double x)
    {
        var sum = 0.0;
        for (var i = c.Length - 1; i >= 0; i--) sum = sum * x + c[i];
        return sum;
    }
}
