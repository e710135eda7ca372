using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Notices;

/// <summary>What each person chose to be told. A person chooses for their own account only.</summary>
public sealed class NoticeKeeper(LogBookStore store)
{
    /// <summary>The viewer's choice; null for whoever gets no notices (customers, tokens without an account).</summary>
    public Task<NoticeChoice?> OfAsync(Viewer viewer, CancellationToken cancellationToken = default) => viewer is not { IsOfFirm: true, UserId: { } id }
        ? Task.FromResult<NoticeChoice?>(null)
        : store.ReadAsync<NoticeChoice?>(
            viewer,
            db => db.Users.Where(user => user.Id == id).Select(user => new NoticeChoice(user.NoticeAtOnce, user.NoticeDigest, user.NoticeOwnSites)).FirstOrDefaultAsync(cancellationToken),
            cancellationToken);

    /// <summary>Sets the viewer's choice.</summary>
    public async Task<SaveOutcome> ChooseAsync(Viewer viewer, NoticeChoice choice, CancellationToken cancellationToken = default)
    {
        if (viewer is not { IsOfFirm: true, UserId: { } id })
        {
            return new SaveOutcome.NotAllowed();
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db => await db.Users.Where(user => user.Id == id).ExecuteUpdateAsync(
                set => set.SetProperty(user => user.NoticeAtOnce, choice.AtOnce).SetProperty(user => user.NoticeDigest, choice.Digest).SetProperty(user => user.NoticeOwnSites, choice.OwnSites),
                cancellationToken) == 1
                ? new SaveOutcome.Saved(1)
                : new SaveOutcome.NotFound(),
            cancellationToken);
    }
}
