using System.Text;
using LogBook.Application.Rescue;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Testing;

namespace LogBook.Web.Tests.Rescue;

/// <summary>A rescue file is read whole and unharmed, or not at all.</summary>
public sealed class RescueReaderTests
{
    private static readonly RescueFile Sample = RescueFiles.Of([RescueFiles.Visit(SampleFirm.Visit())], photos: [new(Guid.NewGuid(), Guid.NewGuid(), RescueFiles.Hash(RescueFiles.Picture), RescueFiles.Picture)]);

    [Fact]
    public void Read_WholeFile_HoldsWhatWasWritten()
    {
        var (file, problem) = RescueReader.Read(RescueFiles.Bytes(Sample));

        Assert.Null(problem);
        Assert.Equal(("Barge tablet", "RYA", Sample.WrittenAt), (file!.Tablet, file.By, file.WrittenAt));
        Assert.Equal(Sample.Visits, file.Visits);
        Assert.Equal(RescueFiles.Picture, Assert.Single(file.Photos).Data);
    }

    [Fact]
    public void Read_CutOffAnywhere_IsRefused()
    {
        var bytes = RescueFiles.Bytes(Sample);

        // The first character alone is no sign of a rescue file; from the format's name on it is one that was cut off.
        foreach (var length in Enumerable.Range(1, bytes.Length - 1).Where(length => length < 60 || length % 97 == 0))
        {
            var (file, problem) = RescueReader.Read(bytes[..length]);
            Assert.Null(file);
            Assert.True(problem == RescueFileTexts.Damaged || problem == RescueFileTexts.Strange);
        }

        Assert.Equal(RescueFileTexts.Damaged, RescueReader.Read(bytes[..^1]).Problem);
    }

    [Fact]
    public void Read_ChangedOnItsWay_IsRefused()
    {
        var text = Encoding.UTF8.GetString(RescueFiles.Bytes(Sample));
        var picture = Convert.ToBase64String(RescueFiles.Picture);
        var otherPicture = (picture[0] == 'A' ? "B" : "A") + picture[1..];
        string[] changed = [text.Replace("YAF-1", "YAF-2", StringComparison.Ordinal), text.Replace(picture, otherPicture, StringComparison.Ordinal), text.Replace("\"visits\":[{", "\"visits\":[null,{", StringComparison.Ordinal)];

        Assert.All(changed, other => Assert.NotEqual(text, other));
        Assert.All(changed, other => Assert.Equal((null, RescueFileTexts.Damaged), RescueReader.Read(Encoding.UTF8.GetBytes(other))));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Date,Site\n1,2")]
    [InlineData("[]")]
    [InlineData("""{"format":7}""")]
    [InlineData("""{"format":"something-else","version":1}""")]
    public void Read_StrangeFile_IsNamedAsSuch(string text) => Assert.Equal((null, RescueFileTexts.Strange), RescueReader.Read(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Read_NewerVersion_IsNamedAsSuch() =>
        Assert.Equal((null, RescueFileTexts.Newer), RescueReader.Read("""{"format":"logbook-rescue","version":2,"visits":"elsewhere"}"""u8.ToArray()));

    [Fact]
    public void Read_FileOfAnEarlierTablet_HoldsItsVisits_AndNoSetUp()
    {
        var visit = VisitDocument.Canonical(VisitDocument.WithIds(SampleFirm.Visit()));

        var (file, _) = RescueReader.Read(Encoding.UTF8.GetBytes($$"""{"format":"logbook-exchange","version":1,"visits":[{{visit}}]}"""));
        var withSetUp = RescueReader.Read(Encoding.UTF8.GetBytes($$"""{"format":"logbook-exchange","version":1,"sites":[],"visits":[{{visit}}]}"""));

        Assert.Equal(("YAF-1", visit), (Assert.Single(file!.Visits).Site, file.Visits[0].Document));
        Assert.Equal((null, RescueFileTexts.Exchange), withSetUp);
    }

    [Fact]
    public void Open_OnlyByItsOwnKey()
    {
        var draft = VisitDraft.FromJson("""{"form":1,"id":"0198b000-0000-7000-8000-00000000000a","site":"YAF-1","technician":"RYA","timeZone":"Europe/London","cautionsSeen":[],"fields":{}}""");
        var (kept, _, second) = RescueFiles.Sealed(draft, "[]");

        Assert.Equal((draft.ToJson(), "[]"), SealedDraft.Open(second, kept.Keys[0].Sealed, kept));
        Assert.Null(SealedDraft.Open(new byte[32], kept.Keys[0].Sealed, kept));
        Assert.Null(SealedDraft.Open([1, 2], kept.Keys[0].Sealed, kept));
        Assert.Null(SealedDraft.Open(second, [], kept));
        Assert.Null(SealedDraft.Open(second, kept.Keys[0].Sealed, kept with { Sealed = [.. kept.Sealed![..^1], (byte)(kept.Sealed[^1] ^ 1)] }));
    }
}
