using TrimOut.Core.History;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.Office.Tests;

public class SampleExchangeTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    [OfficeFact]
    public async Task EverySampleGoesToTheOfficeAndComesBackByteForByte()
    {
        var (van, desk) = (await server.Enroll("sample-van"), await server.Enroll("sample-desk", "office"));
        foreach (var folder in Directory.GetDirectories(Path.Combine(Repository.Root, "sample-jobs")))
        {
            var text = await File.ReadAllTextAsync(Path.Combine(folder, HistoryText.FileName));
            var log = HistoryText.Read(text).Value;
            await using var crew = await OfficeConnection.Open(van, default);
            var sent = await Exchange.Run(crew, log, null, TimeProvider.System, sends: true, _ => { }, default);
            Assert.Equal(log.Changes.Count, sent.Sent);
            Assert.Null(sent.Merge);
            Assert.Empty(ExchangeMark.NotYetThere(sent.Mark, log));

            await using var office = await OfficeConnection.Open(desk, default);
            var (there, mark) = await Exchange.First(office, sent.Mark.House, TimeProvider.System, _ => { }, default);
            Assert.Equal(text, HistoryText.Write(there));
            Assert.Empty(ExchangeMark.NotYetThere(mark, there));

            var again = await Exchange.Run(crew, log, sent.Mark, TimeProvider.System, sends: true, _ => { }, default);
            Assert.Equal((0, null), (again.Sent, again.Merge));
        }
    }
}
