using TrimOut.Papers.Templates;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests;

/// <summary>What papers say of a house in service, in each language, as somebody who speaks it read it.</summary>
public class ServedHousePapersTests
{
    private static readonly PaperData Served = FinishedHouse.Data(ServedHouse.Build().Scribe.Log) with { Date = new DateOnly(2027, 4, 1) };

    [Theory]
    [InlineData("en", "What was done in service")]
    [InlineData("de", "Was im Betrieb getan wurde")]
    [InlineData("es", "Lo que se hizo en servicio")]
    public void TheServiceFormAndWhatTheBookSaysOfItAreAsApproved(string language, string heading)
    {
        Approved.Match(In(PaperList.Find("service-form")!, language), $"served-service-form.{language}.md");
        var book = In(Binder.Paper, language);
        var from = book.IndexOf(heading, StringComparison.Ordinal);
        Assert.True(from > 0, book);
        var to = book.IndexOf("\n## ", from, StringComparison.Ordinal);
        Approved.Match(to < 0 ? book[from..] : book[from..to], $"served-book.{language}.md");
    }

    private static string In(Paper paper, string language) =>
        paper.Write(Served, language == "en" ? null : PaperTemplate.In(paper, language).Value).Markdown;
}
