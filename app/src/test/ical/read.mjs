// Reads a calendar from standard input and prints its events as JSON.
import ICAL from 'ical.js';
import {readFileSync} from 'node:fs';

ICAL.design.strict = true;
// RFC 7986, 5.1, is younger than the reader's list of properties.
ICAL.design.icalendar.property.name = {defaultType: 'text'};
const calendar = new ICAL.Component(ICAL.parse(readFileSync(0, 'utf8')));
const events = calendar.getAllSubcomponents('vevent').map(one => {
  const event = new ICAL.Event(one);
  const alarm = one.getFirstSubcomponent('valarm');
  return {
    uid: event.uid,
    summary: event.summary,
    description: event.description,
    location: event.location,
    allDay: event.startDate.isDate,
    start: event.startDate.toString(),
    days: event.duration.toSeconds() / 86400,
    stamp: one.getFirstPropertyValue('dtstamp').toString(),
    sequence: event.sequence,
    alarm: alarm ? alarm.getFirstPropertyValue('trigger').toString() : null,
  };
});
console.log(JSON.stringify({version: calendar.getFirstPropertyValue('version'),
  name: calendar.getFirstPropertyValue('name'), events}));
