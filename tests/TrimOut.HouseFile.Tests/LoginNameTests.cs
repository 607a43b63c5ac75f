namespace TrimOut.HouseFile.Tests;

public class LoginNameTests
{
    [Theory]
    [InlineData("ash", "root", null, "ash")]
    [InlineData("", "", "kim", "kim")]
    [InlineData(null, "lee", null, "lee")]
    [InlineData(null, null, null, "somebody")]
    public void WhereTheSystemHasNoNameAnotherOneIsTaken(string? system, string? user, string? logName, string name) =>
        Assert.Equal(name, LoginName.Of(() => system ?? throw new FileNotFoundException("/etc/passwd"),
            variable => variable switch { "USER" => user, "LOGNAME" => logName, _ => null }));
}
