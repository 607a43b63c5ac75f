using System.Xml.Linq;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Drawings;

public class LegendTests
{
    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryDrawingSaysWhatItsMarksMeanAndNoneOfThatIsCut(string id)
    {
        foreach (var data in SampleJobs.Names.Select(SampleJobs.Data).Append(FinishedHouse.Data()))
        {
            var drawings = PaperList.Find(id)!.Write(data).Drawings.Values.Select(d => XDocument.Parse(d).Root!)
                // A sheet in its true size has no place for one: what is on it is read, or stands on it.
                .Where(d => d.Attribute("data-part") is null);
            Assert.All(drawings, d =>
            {
                var legend = d.Elements().Where(e => (string?)e.Attribute("data-part") == "legend").ToList();
                Assert.NotEmpty(legend);
                Assert.DoesNotContain(legend, l => l.Value.Contains('…', StringComparison.Ordinal));
            });
        }
    }

    [Fact]
    public void WhatALegendSaysIsInTheWordingOfTheTemplate()
    {
        foreach (var paper in PaperList.All)
        {
            var drawings = new SortedDictionary<string, string>();
            _ = paper.Places(SampleJobs.Data("canal-house"), new Words(p => $"⟦{p}⟧", "x-marked"), drawings).ToList();
            // Some lines are the rest of the one before.
            Assert.All(drawings.Values.Select(d => XDocument.Parse(d).Descendants().Where(e => (string?)e.Attribute("data-part") == "legend").ToList()),
                l => Assert.True(l.Count == 0 || l[0].Value.Contains('⟦')));
        }
    }
}
