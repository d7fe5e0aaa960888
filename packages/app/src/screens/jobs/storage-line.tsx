import { useCallback, useEffect, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import { askForPersistence, type Room, roomLeft } from '../../storage/room.ts';
import { LOCALES, useTexts } from '../../text/texts.ts';
import { storageTexts } from './storage-texts.ts';

/** Where the data is, how much room is left, and whether the browser may take it away. */
export function StorageLine() {
  const say = useTexts(storageTexts);
  const { language } = useSettings();
  const [room, setRoom] = useState<Room | undefined>();
  const [refused, setRefused] = useState(false);
  const look = useCallback(() => {
    roomLeft().then(setRoom, () => undefined);
  }, []);
  useEffect(look, [look]);
  const ask = async () => {
    setRefused(!(await askForPersistence().catch(() => false)));
    look();
  };
  if (room === undefined) return <p className="soft">{say('here')}</p>;
  const megabytes = (bytes: number) =>
    new Intl.NumberFormat(LOCALES[language], {
      style: 'unit',
      unit: 'megabyte',
      maximumFractionDigits: 0,
    }).format(bytes / 1e6);
  return (
    <section className="storage">
      <p className="soft">
        {say('here')} {say('room', { used: megabytes(room.usedBytes), quota: megabytes(room.quotaBytes) })}{' '}
        {room.persistent === true && say('persistent')}
      </p>
      {room.low && <Notice kind="wrong">{say('low')}</Notice>}
      {room.persistent === false && (
        <Notice
          kind="plain"
          actions={refused ? undefined : <Button onPress={() => void ask()}>{say('ask')}</Button>}
        >
          {say(refused ? 'refused' : 'evictable')}
        </Notice>
      )}
    </section>
  );
}
