using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>What a form knows beside its own texts.</summary>
/// <param name="Firm">The firm's set-up in use.</param>
/// <param name="Language">Language of the person.</param>
/// <param name="System">The system that a programme belongs to.</param>
public sealed record FormScope(FirmSetUp Firm, Language Language, WaterSystem? System = null);
