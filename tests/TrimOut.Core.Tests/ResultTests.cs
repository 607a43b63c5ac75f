namespace TrimOut.Core.Tests;

public class ResultTests
{
    [Fact]
    public void AResultThatNobodyGaveIsNoSuccess()
    {
        var never = (new Result<int>[1])[0];
        Assert.False(never.Ok);
        Assert.NotEmpty(never.Reason!);
        Assert.Throws<InvalidOperationException>(() => never.Value);
        Assert.False(never.Then<string>(_ => "went on").Ok);
    }

    [Fact]
    public void ARefusalWithoutAReasonIsNoSuccessEither()
    {
        Result<string> refused = default(Refusal);
        Assert.False(refused.Ok);
        Assert.NotEmpty(refused.Reason!);
    }

    [Fact]
    public void AValueIsASuccessWithoutAReason()
    {
        Result<int> zero = 0;
        Assert.True(zero.Ok);
        Assert.Null(zero.Reason);
        Assert.Equal(0, zero.Value);
    }
}
