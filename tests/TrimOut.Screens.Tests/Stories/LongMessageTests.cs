using Microsoft.Extensions.Time.Testing;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A message that is longer than the foot of the screen is told in parts: nothing of it is lost.</summary>
public class LongMessageTests
{
    private static readonly string[] Words = [.. Enumerable.Range(1, 300).Select(n => $"word{n}")];

    [Fact]
    public void F5LeadsThroughAllPartsOfAnErrorAndBack()
    {
        var shell = Begun();
        shell.Press("enter");
        while (((SheetScreen)shell.Screen).Current!.Fact != WindowFacts.Note)
            shell.Press("down");
        shell.Press("E");
        shell.CameBack(new Refusal(string.Join(' ', Words)));
        var told = new List<string>();
        var first = shell.Draw(80, 24).ToText();
        for (var text = first; told.Count == 0 || text != first; text = shell.Draw(80, 24).ToText())
        {
            Assert.InRange(told.Count, 0, Words.Length - 1);
            told.AddRange(text.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)
                .Where(w => w.StartsWith("word", StringComparison.Ordinal)));
            Assert.Contains("F5 shows the next part", text, StringComparison.Ordinal);
            shell.Press("f5");
        }
        Assert.Equal(Words, told);
        shell.Press("down");
        Assert.DoesNotContain("word1", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        shell.Press("f5");
        Assert.Contains("No message here is longer", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsTypedStaysWhileItsRefusalIsReadInParts()
    {
        var shell = Begun();
        shell.Press(":");
        shell.TextChanged(string.Join(' ', Words));
        shell.Press("enter");
        Assert.Contains("F5 shows the next part", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        shell.Press("f5");
        Assert.Contains("2 of ", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        Assert.Equal(string.Join(' ', Words), shell.Typing!.Text);
    }

    private static ShellState Begun() => new(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
}
