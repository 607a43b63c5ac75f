using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Houses;

public class JoinedConductorsTests
{
    [Theory]
    [InlineData("rust, gray", "rust", "rust to rust (plus), gray to gray (minus)")]
    [InlineData("rust, gray", "Gray", "Gray to Gray (plus), rust to rust (minus)")]
    [InlineData("rust, gray, white", "rust", "plus (rust) to plus, minus to minus")]
    [InlineData("", "rust", "plus (rust) to plus, minus to minus")]
    [InlineData("rust, gray", "", "plus to plus, minus to minus")]
    public void ConductorsAreJoinedByTheColoursOfTheKit(string colours, string plus, string joined)
    {
        var job = Jobs.Roughed();
        if (colours.Length > 0)
            job.SayOf("16/2", CableTypeFacts.Colours, colours);
        if (plus.Length > 0)
            job.SayOf("16/2", CableTypeFacts.Plus, plus);
        Assert.Equal(joined, CableType.Joined(job.Run("W01").Cable));
    }
}
