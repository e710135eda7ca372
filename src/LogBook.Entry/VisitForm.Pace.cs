using LogBook.Entry.Plans;
using LogBook.Entry.State;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace LogBook.Entry;

/// <summary>When the form shows what is another: at once on a server, after the screen on a device that runs the form itself.</summary>
public sealed partial class VisitForm
{
    // Enough to fill a tablet's screen; the rest of a long step follows piece by piece.
    private const int FirstPieces = 6;
    private const int MorePieces = 3;
    private const string Heading = "visit-step";

    private bool _isStepShown = true;
    private bool _isFilling;
    private bool _isSettling;
    private int _turn;

    // On the device itself the browser waits for this code. So it is let paint first, and what takes long is done in pieces that a tap
    // can come between. A server answers at once.
    private bool Waits => _module is not null && State.IsGradual;

    // A field that is not there yet is gone to when all of its step is, and what the last act has brought; the heading at once.
    private bool MayGoTo(string id) => _isStepShown && (id == Heading || (!_isFilling && !_isSettling));

    // The fields of the step that is left are gone before the next tap: none of them may take what is meant for the new one.
    private void LeaveStep()
    {
        _turn++;
        _isStepShown = !Waits;
        _isFilling = Waits;
        StateHasChanged();
    }

    private void EnterStep(string? focus)
    {
        _focus = focus;
        if (Waits)
        {
            _ = ShowStepAsync(_turn);
        }
    }

    // The name of the step first, then what fills a screen, then the rest.
    private Task ShowStepAsync(int turn) => ApartAsync(async script =>
    {
        await script.InvokeVoidAsync("painted");
        while (IsTurn(turn) && State.WorkOn())
        {
            await script.InvokeVoidAsync("breathe");
        }

        if (!IsTurn(turn))
        {
            return;
        }

        _isStepShown = true;
        State.Settle();
        State.BeginPortions(FirstPieces);
        StateHasChanged();
        await FillAsync(script, turn);
    });

    // A part of the step that is opened when the rest is there has pieces of its own.
    private void FillOn()
    {
        if (Waits && !_isFilling)
        {
            _isFilling = true;
            _ = ApartAsync(script => FillAsync(script, _turn));
        }
    }

    private async Task FillAsync(IJSObjectReference script, int turn)
    {
        do
        {
            await script.InvokeVoidAsync("breathe");
        }
        while (IsTurn(turn) && State.ShowMore(MorePieces));
        if (IsTurn(turn))
        {
            _isFilling = false;
            StateHasChanged();
        }
    }

    private bool IsTurn(int turn) => !_gone && turn == _turn;

    private void Edited()
    {
        SaveSoon();
        if (!Waits)
        {
            Settle();
        }
        else if (!_isSettling)
        {
            _isSettling = true;
            _ = SettleAsync();
        }
    }

    private void Settle()
    {
        // Another kind of visit may have fewer steps.
        if (State.Plan is { } plan && !plan.Steps.Contains(State.Step))
        {
            LeaveStep();
            State.Step = plan.Steps[0];
            EnterStep(null);
        }

        State.Settle();
    }

    // What was tapped or typed is on the screen first; then the visit is read and checked, each by itself, and what is another is shown.
    private Task SettleAsync() => ApartAsync(async script =>
    {
        try
        {
            await script.InvokeVoidAsync("painted");
            while (!_gone && State.WorkOn())
            {
                await script.InvokeVoidAsync("breathe");
            }

            if (!_gone)
            {
                Settle();
            }
        }
        finally
        {
            _isSettling = false;
        }

        // The form itself is shown before its parts; what the person is led to may stand in one of them.
        if (!_gone && _focus is not null)
        {
            StateHasChanged();
        }
    });

    private async Task ApartAsync(Func<IJSObjectReference, Task> work)
    {
        try
        {
            await work(_module!);
        }
        catch (Exception exception) when (_gone && exception is JSException or ObjectDisposedException)
        {
            // The form is left, and its script with it.
        }
        catch (Exception exception)
        {
            await DispatchExceptionAsync(exception);
        }
    }
}
