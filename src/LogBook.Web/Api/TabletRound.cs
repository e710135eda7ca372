using System.Text.Json;
using LogBook.Domain.Assessments;

namespace LogBook.Web.Api;

/// <summary>Today's round in words.</summary>
/// <param name="Now">The server's moment, by which a tablet corrects its own clock.</param>
/// <param name="Stops">Sites, due first.</param>
/// <param name="Firm">Name of the service firm, for the summary that is shown on the tablet.</param>
/// <param name="Phrases">The firm's own quick phrases by the place where they are offered. Here and not in the round, because the exchange format has none.</param>
/// <param name="Settings">Thresholds that the firm has set, by which the form on the tablet asks as the server's does.</param>
/// <param name="Actions">Actions that no visit has closed, of every site: the visits of a round go back only so far.</param>
public sealed record TabletRound(string Now, IReadOnlyList<TabletStop> Stops, JsonElement Phrases, string Firm, IReadOnlyList<EngineSettingChange> Settings, IReadOnlyList<TabletAction> Actions);
