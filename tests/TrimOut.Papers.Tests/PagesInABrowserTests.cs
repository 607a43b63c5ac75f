using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests;

/// <summary>
/// Every page of every sample in a browser: on a phone, and held to axe, which knows the Web Content Accessibility Guidelines 2.1, levels A and AA.
/// </summary>
public partial class PagesInABrowserTests
{
    private const int Phone = 375;
    private const int Desk = 1024;

    private static IEnumerable<(string Name, WrittenPaper Paper)> Pages =>
        from house in SampleJobs.Names.Select(n => (Name: n, Data: SampleJobs.Data(n))).Append((Name: "finished", Data: FinishedHouse.Data()))
        from paper in PaperList.All
        select ($"{house.Name} {paper.Id}", paper.Write(house.Data));

    /// <summary>Each in a frame as wide as a phone: what is wider than its frame would have to be moved sideways to be read.</summary>
    [ChromiumFact]
    public void NoPageIsWiderThanAPhone()
    {
        var wide = Framed(Phone, Pages, "", "(() => ({ wide: d.documentElement.scrollWidth, letters: Math.min(...[...d.querySelectorAll('p,li,td,th')]" +
            ".map(e => parseFloat(f.contentWindow.getComputedStyle(e).fontSize))) }))()");
        Assert.All(wide, w => Assert.True(w.Value.GetProperty("wide").GetInt32() <= Phone, $"{w.Name} is {w.Value.GetProperty("wide")} px wide."));
        // 11 points, as large as a book's print on paper.
        Assert.All(wide, w => Assert.True(w.Value.GetProperty("letters").GetDouble() >= 14.6, $"{w.Name} has letters of {w.Value.GetProperty("letters")} px."));
    }

    /// <summary>German has long words, and a word in two pieces without a hyphen is read as two.</summary>
    [ChromiumFact]
    public void NoWordThatATableBeginsWithIsPartedOnAPhone()
    {
        var data = SampleJobs.Data("canal-house");
        var pages = from language in new[] { "de", "es" }
                    from paper in PaperList.All
                    select ($"{paper.Id} in {language}", paper.Write(data, PaperTemplate.In(paper, language).Value));
        var parted = Framed(Phone, pages, "", "[...d.querySelectorAll('tbody th')].flatMap(e => [...e.childNodes].filter(n => n.nodeType === 3)" +
            ".flatMap(n => [...n.data.matchAll(/\\p{L}{2,20}/gu)].filter(m => { const r = d.createRange(); r.setStart(n, m.index);" +
            "r.setEnd(n, m.index + m[0].length); return r.getClientRects().length > 1; }).map(m => m[0])))");
        Assert.All(parted, p => Assert.True(p.Value.GetArrayLength() == 0, $"{p.Name}: {p.Value}"));
    }

    [AxeFact]
    public void AxeFindsNothing()
    {
        foreach (var width in (int[])[Desk, Phone])
        {
            // A page is judged for what it is made of: one large house has all of it.
            var found = Framed(width, Pages.Where(p => !p.Name.StartsWith("orchard", StringComparison.Ordinal)), File.ReadAllText(AxeFactAttribute.Script!),
                "f.contentWindow.axe.run(d, { resultTypes: ['violations'] }).then(r => r.violations.map(v => v.id + ' at ' + v.nodes[0].html.slice(0, 200)))");
            Assert.All(found, f => Assert.Equal("[]", $"{f.Value.GetRawText()}{(f.Value.GetArrayLength() == 0 ? "" : $" on {f.Name}")}"));
        }
    }

    /// <summary>What a script finds out in each page (<c>d</c>, in its frame <c>f</c>), one after the other.</summary>
    private static List<(string Name, JsonElement Value)> Framed(int width, IEnumerable<(string Name, WrittenPaper Paper)> pages, string within, string asked)
    {
        var all = pages.ToList();
        var outer = new StringBuilder("<!DOCTYPE html><html lang=\"en\"><body><script>addEventListener('load', async () => { const found = [];")
            .Append("for (const f of document.querySelectorAll('iframe')) { const d = f.contentDocument; found.push(await ").Append(asked).Append("); }")
            .Append("const o = document.createElement('pre'); o.id = 'found'; o.textContent = JSON.stringify(found);")
            .Append("document.body.replaceChildren(o); });</script>");
        foreach (var (_, paper) in all)
        {
            // The page forbids scripts; here one looks at it.
            var page = Policy().Replace(paper.ToHtml(), _ => within.Length == 0 ? "" : $"<script>{within}</script>");
            outer.Append(CultureInfo.InvariantCulture, $"<iframe style=\"width:{width}px;height:800px;border:0\" ")
                .Append(CultureInfo.InvariantCulture, $"srcdoc=\"{WebUtility.HtmlEncode(page)}\"></iframe>");
        }
        var dom = Chromium.Dom(outer.Append("</body></html>").ToString(), 120);
        var found = Found().Match(dom);
        Assert.True(found.Success, "The browser did not come to an end with the pages.");
        var values = JsonDocument.Parse(WebUtility.HtmlDecode(found.Groups["json"].Value)).RootElement.EnumerateArray().ToList();
        Assert.Equal(all.Count, values.Count);
        return [.. all.Zip(values, (page, value) => (page.Name, value))];
    }

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>")]
    private static partial Regex Policy();

    [GeneratedRegex("<pre id=\"found\">(?<json>.*?)</pre>", RegexOptions.Singleline)]
    private static partial Regex Found();
}

/// <summary>A test that runs axe in a browser, and says so where one of them is not there.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class AxeFactAttribute : FactAttribute
{
    /// <summary>The file of axe; null where none was named.</summary>
    public static string? Script { get; } = Environment.GetEnvironmentVariable("TRIMOUT_AXE") is { } file && File.Exists(file) ? file : null;

    public AxeFactAttribute()
    {
        if (ChromiumFactAttribute.Browser is null)
            Skip = "No chromium or chrome on the path: nothing shows the pages to axe.";
        else if (Script is null)
            Skip = "TRIMOUT_AXE does not name the file axe.min.js of the npm package axe-core.";
    }
}
