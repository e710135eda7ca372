using LogBook.Application.Accounts;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Notices;

/// <summary>Somebody of the firm who asked to be told.</summary>
internal sealed record NoticeReader(int UserId, string Email, string Name, string? PersonCode, PersonRole Role, Language Language, bool AtOnce, bool Digest, bool OwnSites)
{
    /// <summary>The person as a viewer: a notice tells nothing that its reader may not look up.</summary>
    public Viewer Viewer => new(UserId, Name, PersonCode, Role, null, Language);

    /// <summary>Whether a site concerns the person.</summary>
    /// <param name="assignedTo">Code of the technician whose round the site is on; null also for what belongs to no site.</param>
    public bool Follows(string? assignedTo) => !OwnSites || (PersonCode is not null && assignedTo is not null && CodeKeys.Of(assignedTo) == CodeKeys.Of(PersonCode));

    /// <summary>All who asked for anything: accounts of the firm that are in use.</summary>
    public static async Task<IReadOnlyList<NoticeReader>> AllAsync(LogBookDb db, CancellationToken cancellationToken)
    {
        var rows = await db.Users
            .Where(user => (user.NoticeAtOnce || user.NoticeDigest) && user.DisabledAt == null && user.CustomerId == null && user.Email != null)
            .Select(user => new
            {
                user.Id, Email = user.Email!, user.PersonCode, user.Language, user.NoticeAtOnce, user.NoticeDigest, user.NoticeOwnSites,
                Name = db.SetUp.Where(row => row.Kind == SetUpKind.Person && row.Code == user.PersonCode).Select(row => row.Name).FirstOrDefault(),
                Roles = db.UserRoles.Where(link => link.UserId == user.Id).Join(db.Roles, link => link.RoleId, role => role.Id, (_, role) => role.Name).ToList(),
            })
            .ToListAsync(cancellationToken);
        return
        [
            .. rows.Select(row => (Row: row, Role: row.Roles.Select(RoleNames.Parse).FirstOrDefault(role => role is not null)))
                .Where(pair => pair.Role is PersonRole.Technician or PersonRole.Supervisor or PersonRole.Administrator)
                .Select(pair => new NoticeReader(
                    pair.Row.Id, pair.Row.Email, pair.Row.Name ?? pair.Row.Email, pair.Row.PersonCode, pair.Role!.Value, pair.Row.Language, pair.Row.NoticeAtOnce, pair.Row.NoticeDigest, pair.Row.NoticeOwnSites)),
        ];
    }
}
