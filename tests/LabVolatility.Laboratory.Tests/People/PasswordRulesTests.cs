using LabVolatility.Laboratory.Demo;
using LabVolatility.Laboratory.People;
using Xunit;

namespace LabVolatility.Laboratory.Tests.People;

public sealed class PasswordRulesTests
{
    public static TheoryData<string> DemoPasswords => [.. DemoPeople.All.Select(p => p.Password)];

    [Theory]
    [InlineData("short-password")]
    [InlineData("passwordpassword")]
    [InlineData("Password123456789")]
    [InlineData("aaaaaaaaaaaaaaaaaaaa")]
    [InlineData("abababababababababab")]
    [InlineData("qwertyuiopasdfghjkl")]
    [InlineData("1q2w3e4r1q2w3e4r5t")]
    [InlineData("123456789012345")]
    [InlineData("administrator2026!")]
    [InlineData("LabVolatility2026!!")]
    [InlineData("welcome-welcome-1234")]
    [InlineData("letmeinletmeinletmein")]
    [InlineData("refinery-gasoline-1")]
    [InlineData("iloveyou-sunshine-1")]
    [InlineData("summer-winter-2026!")]
    [InlineData("superman-batman-123")]
    [InlineData("monday-tuesday-2026")]
    [InlineData("marit.solberg-1234567")]
    [InlineData("northmere-laboratory")]
    [InlineData("")]
    public void Problem_GuessablePassword_IsRefused(string password)
    {
        Assert.NotNull(PasswordRules.Problem(password, "marit.solberg", "Marit Solberg", "Northmere Refinery"));
    }

    [Theory]
    [InlineData("seven-otters-by-the-weir")]
    [InlineData("ærlig talt, en lang setning")]
    [InlineData("密码很长很长并且没有人会猜到它吧")]
    public void Problem_LongWordsOfOnesOwn_AreTaken(string password)
    {
        Assert.Null(PasswordRules.Problem(password, "marit.solberg", "Marit Solberg", "Northmere Refinery"));
    }

    [Theory, MemberData(nameof(DemoPasswords))]
    public void Problem_PasswordsOfTheDemo_AreTaken(string password)
    {
        Assert.Null(PasswordRules.Problem(password));
    }

    [Fact]
    public void OneTimePassword_ManyMade_NoneTwiceAndAllTaken()
    {
        var made = Enumerable.Range(0, 1000).Select(_ => OneTimePassword.Make()).ToList();

        Assert.Equal(made.Count, made.Distinct().Count());
        Assert.All(made, password => Assert.Null(PasswordRules.Problem(password)));
    }
}
