package org.tenthwise.app.device;

import com.gluonhq.attach.lifecycle.LifecycleEvent;
import com.gluonhq.attach.lifecycle.LifecycleService;
import com.gluonhq.attach.util.Services;

/** Told by the device; on a desk nothing ever pauses. */
public final class AttachPauses implements Pauses {

    @Override
    public void onPause(Runnable before) {
        Services.get(LifecycleService.class).ifPresent(service -> service.addListener(LifecycleEvent.PAUSE, before));
    }
}
